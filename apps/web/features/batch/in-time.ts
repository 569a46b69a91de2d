import type { HistoryItem, StayShown } from '@sprigline/contract';

type IncidentThere = StayShown['incidents'][number];
type TreatmentThere = StayShown['treatments'][number];

/** What the history tells: an entry of the batch, or what happened to the place where it stood. */
export type InTime =
  | { readonly kind: 'entry'; readonly day: string; readonly id: string; readonly item: HistoryItem }
  | { readonly kind: 'incident'; readonly day: string; readonly id: string; readonly incident: IncidentThere }
  | { readonly kind: 'treatment'; readonly day: string; readonly id: string; readonly treatment: TreatmentThere };

/**
 * Sets what happened around a batch among its own entries. Its entries keep their order, which comes
 * from content; what happened at the place stands before those of the first later day. An incident that began
 * before the batch stood there is told from the day on which it came.
 */
export function inTime(history: readonly HistoryItem[], stays: readonly StayShown[]): InTime[] {
  const around = new Map<string, InTime>();
  for (const { from, incidents, treatments } of stays) {
    for (const incident of incidents) {
      if (!around.has(incident.entryId)) around.set(incident.entryId, { kind: 'incident', day: incident.from < from ? from : incident.from, id: incident.entryId, incident });
    }
    for (const treatment of treatments) around.set(treatment.entryId, { kind: 'treatment', day: treatment.day, id: treatment.entryId, treatment });
  }
  const waiting = [...around.values()].toSorted((one, other) => (one.day === other.day ? 0 : one.day < other.day ? -1 : 1));
  const told: InTime[] = [];
  for (const item of history) {
    const day = (item.now ?? item).observedOn;
    while (waiting[0] && waiting[0].day < day) told.push(...waiting.splice(0, 1));
    told.push({ kind: 'entry', day, id: item.id, item });
  }
  return [...told, ...waiting];
}
