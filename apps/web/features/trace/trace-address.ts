import { TRACED, TraceQuery } from '@sprigline/contract';

export type Search = Readonly<Record<string, string | string[] | undefined>>;

/** Rows that a page shows; the table for a spreadsheet has all. */
export const ON_A_PAGE = 500;
/** Rows that a print-out has. */
export const ON_PAPER = 2_000;

/** What an address asks for; nothing where it names no thing, or makes no sense. */
export function askedIn(search: Search): Record<string, string> | undefined {
  const asked: Record<string, string> = {};
  for (const name of [...TRACED, 'from', 'until']) {
    const value = search[name];
    if (typeof value === 'string' && value !== '') asked[name] = value;
  }
  return TraceQuery.safeParse(asked).success ? asked : undefined;
}

export const queryOf = (asked: Readonly<Record<string, string>>, more: Readonly<Record<string, string>> = {}): string =>
  `?${new URLSearchParams({ ...asked, ...more }).toString()}`;
