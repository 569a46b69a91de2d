/** What the address of the list asks for. */
export type BatchSearch = Readonly<Partial<Record<'placeId' | 'standId' | 'donorTreeId' | 'stage' | 'state' | 'relation' | 'after' | 'label', string>>>;

export type Asked = Readonly<Partial<Record<(typeof FILTERS)[number], string>>>;

const FILTERS = ['placeId', 'standId', 'donorTreeId', 'stage', 'state', 'relation'] as const;

/** The filters alone; those with plants unless something else is said, since a bench is walked for what lives. */
export function askedOf(search: BatchSearch): Asked {
  const asked: Record<string, string> = {};
  for (const name of FILTERS) {
    const value = search[name];
    if (value) asked[name] = value;
  }
  return search.state === undefined ? { ...asked, state: 'alive' } : asked;
}

/** As the API is asked. @param after where the part begins */
export function queryOf(asked: Asked, after?: string): string {
  return new URLSearchParams({ ...asked, ...(after ? { after } : {}) }).toString();
}

/** As the next part stands in the page's own address: "all" is said there by an empty state. */
export const addressOf = (asked: Asked, after: string): string => `?${queryOf({ state: '', ...asked }, after)}`;
