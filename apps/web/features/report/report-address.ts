export type Search = Readonly<Record<string, string | string[] | undefined>>;

/** What an address asks a report for, of the names that the report knows; empty ones are left out. */
export function askedOf(search: Search, names: readonly string[]): Record<string, string> {
  const asked: Record<string, string> = {};
  for (const name of names) {
    const value = search[name];
    if (typeof value === 'string' && value !== '') asked[name] = value;
  }
  return asked;
}

export function queryOf(asked: Readonly<Record<string, string>>, more: Readonly<Record<string, string>> = {}): string {
  const query = new URLSearchParams({ ...asked, ...more }).toString();
  return query === '' ? '' : `?${query}`;
}

export const LANDOWNER = ['standId', 'partnerId', 'permissionId', 'asOf'] as const;
export const FUNDER = ['siteId', 'season', 'taxonId', 'asOf'] as const;
