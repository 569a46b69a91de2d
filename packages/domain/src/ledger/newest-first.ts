/**
 * A list that grows at its head and is never changed.
 *
 * Every state of the books keeps sharing the part that was there before it, so
 * that going back to an earlier state, or trying another order, costs nothing.
 */
export type NewestFirst<Item> = { readonly newest: Item; readonly older: NewestFirst<Item> } | undefined;

export const withNewest = <Item>(older: NewestFirst<Item>, newest: Item): NewestFirst<Item> => ({ newest, older });

export function oldestFirst<Item>(list: NewestFirst<Item>): Item[] {
  const items: Item[] = [];
  for (let rest = list; rest; rest = rest.older) items.push(rest.newest);
  return items.reverse();
}
