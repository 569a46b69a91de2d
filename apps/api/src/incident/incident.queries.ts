import type { IncidentShown } from '@sprigline/contract';
import { type FoundPlace, incidentSpan } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { mayMend } from '../entry/history.queries.ts';
import type { Caller } from '../http/caller.ts';
import { type PlaceStory, placeStoryOf } from '../place/place-story.queries.ts';

/**
 * Every incident of a story, the newest first: from when to when, by what was told
 * and by what rounds found since.
 */
export function incidentsIn(story: PlaceStory, caller: Pick<Caller, 'role' | 'personId'>): IncidentShown[] {
  const found = foundIn(story);
  return story.incidents
    .map(({ entry, observedOn, minute, said, latestVersionId, writtenBy }) => {
      const { placeId, what, severity, detail, lastGoodOn, untilDay } = said;
      const { from, until, endSeen } = incidentSpan({ placeId, what, observedOn, minute, lastGoodOn, untilDay }, found);
      return {
        entryId: entry.id, placeId, placeName: story.places.get(placeId)?.name ?? '', what, severity, detail: detail ?? null, observedOn,
        from, until: until ?? null, endSeen, latestVersionId, writtenBy, mayMend: mayMend(entry, caller, story.at),
      };
    })
    .sort((one, other) => (one.from < other.from ? 1 : one.from > other.from ? -1 : one.entryId < other.entryId ? 1 : -1));
}

/** How places were found on rounds. */
export const foundIn = ({ found }: PlaceStory): FoundPlace[] =>
  found.flatMap(({ said, observedOn, minute }) => (said.placeId !== undefined && said.conditions ? [{ placeId: said.placeId, day: observedOn, minute, conditions: said.conditions }] : []));

/** Incidents at some places, and at all that these ever lay in. */
export async function incidentsAround(sql: UnitOfWork, caller: Caller, placeIds: readonly string[]): Promise<IncidentShown[]> {
  return incidentsIn(await placeStoryOf(sql, caller.programmeId, placeIds), caller);
}

/** A query that answers `id` of the places of a programme, `$1`, at which an incident was ever told. */
export const PLACES_WITH_INCIDENTS = `SELECT DISTINCT place_id AS id FROM entry WHERE programme_id = $1 AND kind = 'incident' AND place_id IS NOT NULL`;

export async function placesWithIncidents(sql: UnitOfWork, programmeId: string): Promise<string[]> {
  const rows = await sql.rows<{ id: string }>(PLACES_WITH_INCIDENTS, [programmeId]);
  return rows.map(({ id }) => id);
}
