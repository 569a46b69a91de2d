import { FunnelQuery } from '@sprigline/contract';

export type Search = Readonly<Record<string, string | string[] | undefined>>;

/** Names that a reading can be narrowed by, as they stand in the address of a page. */
export const FILTERS = ['standId', 'taxonId', 'season', 'recipeId', 'ageClass', 'placeId'] as const;
export type FilterName = (typeof FILTERS)[number];

/** What the funnels of a page can be told apart by. */
export const GROUPS = ['stand', 'taxon', 'season', 'recipe', 'ageClass'] as const;
export type Group = (typeof GROUPS)[number];

export const groupIn = ({ by }: Search): Group => GROUPS.find((group) => group === by) ?? 'stand';

/**
 * What a page's address chooses; whatever is empty or makes no sense is left out,
 * so that a shortened or mistyped link still shows something.
 */
export function chosenIn(search: Search): Record<string, string> {
  const chosen: Record<string, string> = {};
  for (const name of FILTERS) {
    const value = search[name];
    if (typeof value === 'string' && value !== '' && FunnelQuery.safeParse({ [name]: value }).success) chosen[name] = value;
  }
  return chosen;
}

export const queryOf = (chosen: Readonly<Record<string, string>>): string => {
  const query = new URLSearchParams(chosen).toString();
  return query === '' ? '' : `?${query}`;
};

/** Where a part of a list begins, as the address says; whether it makes sense is for the API to say. */
export const afterIn = ({ after }: Search): string | undefined => (typeof after === 'string' && after !== '' ? after : undefined);
