import type { ExposureShown, StayShown } from '@sprigline/contract';
import { exposure, overlaps, type Whereabouts, whereabouts } from '@sprigline/domain';
import type { Caller } from '../http/caller.ts';
import { incidentsIn } from '../incident/incident.queries.ts';
import type { PlaceStory } from '../place/place-story.queries.ts';
import type { StayRow } from './batch-detail.queries.ts';

/** What a batch was exposed to, read from where it stood when, and from where that place was carried meanwhile. */
export function surroundingsOf(stays: readonly StayRow[], story: PlaceStory, caller: Caller): { stays: StayShown[]; exposure: ExposureShown[] } {
  const whereOf = ({ placeId, from, until }: StayRow) => whereabouts([{ placeId, from, until: until ?? undefined }], story.places);
  const incidents = incidentsIn(story, caller).toReversed();
  return {
    stays: stays.map((stay) => {
      const where = whereOf(stay);
      return {
        place: stay.place, from: stay.from, until: stay.until,
        incidents: incidents
          .filter(({ placeId, from, until }) => wasThere(where, placeId, { from, until: until ?? undefined }))
          .map(({ entryId, what, severity, from, until, detail, placeName }) => ({ entryId, what, severity, from, until, detail, placeName })),
        treatments: story.treatments
          .filter(({ said, observedOn }) => said.placeId !== undefined && wasThere(where, said.placeId, { from: observedOn, until: observedOn }))
          .map(({ entry, said, observedOn }) => ({ entryId: entry.id, what: said.what, day: observedOn, product: said.product ?? null, placeName: story.places.get(said.placeId ?? '')?.name ?? '' })),
      };
    }),
    exposure: exposure(stays.flatMap(whereOf), story.regimes).map(({ from, until, regime }) => ({ from, until: until ?? null, regime: regime ?? null })),
  };
}

const wasThere = (where: readonly Whereabouts[], placeId: string, days: { from: string; until?: string | undefined }): boolean =>
  where.some((so) => so.path.includes(placeId) && overlaps(so, days));
