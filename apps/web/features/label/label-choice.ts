export const LABELS_OF = ['batches', 'donorTrees', 'places'] as const;
export type LabelsOf = (typeof LABELS_OF)[number];

/** As an address names it: of what, and all of a place or a stand, or some by their ids. */
export interface LabelsAsked {
  readonly of: LabelsOf;
  readonly placeId?: string | undefined;
  readonly standId?: string | undefined;
  readonly ids: readonly string[];
}

/** As many as may be ticked one by one: their ids have to fit into an address. */
export const MOST_TICKED = 200;

/** `ids` may stand there several times, as a form without script sends ticked boxes, or with commas between them. */
export function labelsAsked(asked: URLSearchParams): LabelsAsked {
  const named = asked.get('of');
  return {
    of: LABELS_OF.find((of) => of === named) ?? 'batches',
    placeId: asked.get('placeId') || undefined,
    standId: asked.get('standId') || undefined,
    ids: asked.getAll('ids').flatMap((ids) => ids.split(',')).filter((id) => id !== '').slice(0, MOST_TICKED),
  };
}

/** The same for the API and for the next page. Ids say all: the place that they were chosen in adds nothing. */
export function queryOfLabels({ of, placeId, standId, ids }: LabelsAsked): string {
  const where: Record<string, string> = ids.length > 0 ? { ids: ids.join(',') } : { ...(placeId === undefined ? {} : { placeId }), ...(standId === undefined ? {} : { standId }) };
  return new URLSearchParams({ of, ...where }).toString();
}

export const isChosen = ({ placeId, standId, ids }: LabelsAsked): boolean => placeId !== undefined || standId !== undefined || ids.length > 0;

/** What a page was asked with, as the framework tells it. */
export function searchOf(search: Readonly<Record<string, string | string[] | undefined>>): URLSearchParams {
  return new URLSearchParams(Object.entries(search).flatMap(([name, value]) => [value ?? []].flat().map((one) => [name, one] as [string, string])));
}
