import type { Round, TapState } from '@sprigline/contract';
import { type Conditions, entryAllowedFrom, isBefore, isGood, type Moment, regimeOn, TAPS, tapOfIncident, tapsToAsk, type Whereabouts, whereabouts } from '@sprigline/domain';
import type { Caller } from '../http/caller.ts';
import { foundIn, incidentsIn } from '../incident/incident.queries.ts';
import type { PlaceStory } from '../place/place-story.queries.ts';

/** Trees at a site stand under no lamp. */
const OUT_OF_DOORS = new Set(['site', 'plot', 'partner']);

/** What a round begins with: the taps of the place, what is wrong there, and whether it may be entered. */
export function placeFound(placeId: string, story: PlaceStory, caller: Caller, now: Moment): Pick<Round, 'taps' | 'incidents' | 'noEntryBefore'> {
  const where = whereabouts([{ placeId, from: now.day }], story.places).at(-1);
  const path = where?.path ?? [placeId];
  const incidents = incidentsIn(story, caller).filter(({ until, placeId: at }) => until === null && path.includes(at));
  return {
    incidents,
    noEntryBefore: noEntryBefore(path, story, now),
    taps: OUT_OF_DOORS.has(story.places.get(placeId)?.kind ?? '') ? [] : tapsOf(placeId, { path, story, day: now.day, open: incidents.filter((one) => one.placeId === placeId) }),
  };
}

interface Around {
  readonly path: Whereabouts['path'];
  readonly story: PlaceStory;
  readonly day: string;
  readonly open: Round['incidents'];
}

function tapsOf(placeId: string, { path, story, day, open }: Around): TapState[] {
  const found = foundIn(story).filter((one) => one.placeId === placeId);
  const regime = regimeOn(day, path, story.regimes);
  const lastOf = (tap: (typeof TAPS)[number], isOne: (answer: 'yes' | 'no' | 'notHere') => boolean = () => true) =>
    found.flatMap(({ day, minute = -1, conditions }) => {
      const answer = conditions[tap];
      return answer !== undefined && isOne(answer) ? [{ day, minute, answer }] : [];
    }).toSorted((a, b) => (a.day < b.day || (a.day === b.day && a.minute < b.minute) ? 1 : -1))[0];

  const last: Conditions = Object.fromEntries(TAPS.flatMap((tap) => { const one = lastOf(tap); return one ? [[tap, one.answer]] : []; }));
  const asked = tapsToAsk(regime && keptBy(regime), last);
  return TAPS.map((tap) => {
    const before = lastOf(tap);
    const incident = open.find(({ what }) => tapOfIncident(what) === tap);
    return {
      tap, isAsked: asked.includes(tap),
      last: before ? { day: before.day, answer: before.answer } : null,
      lastGoodOn: lastOf(tap, (answer) => isGood(tap, answer))?.day ?? null,
      open: incident ? { entryId: incident.entryId, since: incident.from } : null,
    };
  });
}

const keptBy = ({ lightHours, heatC, air, cover }: PlaceStory['regimes'][number]) =>
  ({ lightHours: lightHours ?? undefined, heatC: heatC ?? undefined, air: air ?? undefined, cover: cover ?? undefined });

/** The last of the moments from which a spray here, or around, allows to go in again, if it has not come. */
function noEntryBefore(path: readonly string[], story: PlaceStory, now: Moment): Round['noEntryBefore'] {
  const waits = story.treatments.flatMap(({ said, observedOn, minute }) => {
    const from = said.what === 'spray' && said.placeId !== undefined && path.includes(said.placeId) ? entryAllowedFrom({ observedOn, minute, reentryHours: said.reentryHours }) : undefined;
    return from && isBefore(now, from) ? [{ ...from, product: said.product ?? null, placeName: story.places.get(said.placeId ?? '')?.name ?? '' }] : [];
  });
  return waits.toSorted((a, b) => (isBefore(a, b) ? 1 : -1))[0] ?? null;
}
