import { DomainError } from '../errors.ts';

/**
 * Holm's correction of many chances at once: of ten recipes one looks special by luck.
 *
 * @param chances each 0 to 1
 * @returns corrected ones in the same order, 0 to 1
 * @throws DomainError `numbers/not-a-share` when one is no chance
 *
 * Source: Holm S (1979) Scand. J. Stat. 6:65-70; as `p.adjust(method = "holm")` in R.
 */
export function holm(chances: readonly number[]): number[] {
  const off = chances.find((chance) => !(chance >= 0 && chance <= 1));
  if (off !== undefined) throw new DomainError('numbers/not-a-share', 'a chance lies between 0 and 1', { chance: off });
  const corrected = [...chances];
  let highest = 0;
  for (const [rank, { chance, at }] of chances.map((chance, at) => ({ chance, at })).sort((a, b) => a.chance - b.chance).entries()) {
    highest = Math.max(highest, Math.min(1, chance * (chances.length - rank)));
    corrected[at] = highest;
  }
  return corrected;
}
