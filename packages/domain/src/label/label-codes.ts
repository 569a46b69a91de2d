import { DomainError } from '../errors.ts';
import type { Dice } from '../random/dice.ts';
import { checkCharacter } from './check-character.ts';
import { LABEL_ALPHABET, LABEL_CODE_LENGTH } from './label-code.ts';

/** As many as are drawn at once. */
const MOST = 100_000;
/** Hardly more than half of all draws are thrown away; who needs a hundred has drawn from a list that is full, or with broken dice. */
const DRAWS_EACH = 100;

/**
 * Draws codes for labels that are printed before anybody knows what they will be on.
 *
 * A draw whose check character is not in the alphabet is thrown away, as are those that are taken.
 *
 * @param random at least 0 and below 1; for labels that somebody prints it should not be guessed, so not seeded dice
 * @param n how many, a whole number from 1 to 100,000
 * @param taken codes that exist already, whatever they are on
 * @throws DomainError `label/not-a-number` for another n
 * @throws DomainError `label/none-left` when a hundred draws a code do not bring that many
 */
export function labelCodes(random: Dice, n: number, taken: { has(code: string): boolean } = new Set()): string[] {
  if (!Number.isInteger(n) || n < 1 || n > MOST) {
    throw new DomainError('label/not-a-number', `codes are drawn from 1 to ${MOST} at once`, { n });
  }
  const drawn = new Set<string>();
  for (let draws = n * DRAWS_EACH; drawn.size < n && draws > 0; draws -= 1) {
    const payload = Array.from({ length: LABEL_CODE_LENGTH - 1 }, () => LABEL_ALPHABET.charAt(Math.floor(random() * LABEL_ALPHABET.length))).join('');
    const check = checkCharacter(payload);
    if (LABEL_ALPHABET.includes(check) && !taken.has(payload + check)) drawn.add(payload + check);
  }
  if (drawn.size < n) throw new DomainError('label/none-left', `only ${drawn.size} of ${n} codes could be drawn`, { n, drawn: drawn.size });
  return [...drawn];
}
