import { DomainError } from '../errors.ts';

/** What stands for 0 to 36, in the order of the standard. */
const VALUES = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*';
const MODULUS = 37;

/**
 * The check character of ISO/IEC 7064, pure system MOD 37-2, to be written behind the payload.
 *
 * Each character weighs twice as much as the one behind it, and the whole sum, the check character
 * included, leaves 1 when divided by 37. As 2 is a primitive root of 37, the weights of 36 characters in a row
 * all differ, so one wrong character and a swap of any two, neighbours or not, always change what is left.
 *
 * @param payload digits and capitals, at least one, at most 35: with the check character that is as far as the weights differ
 * @returns a digit, a capital or `*`
 * @throws DomainError `label/not-a-payload` for none, too many, or other characters
 *
 * Source: ISO/IEC 7064:2003, 6 and table of systems; from memory.
 */
export function checkCharacter(payload: string): string {
  if (!/^[0-9A-Z]{1,35}$/.test(payload)) {
    throw new DomainError('label/not-a-payload', 'a check character is worked out of 1 to 35 digits and capitals', { payload });
  }
  let sum = 0;
  for (const character of payload) sum = ((sum + VALUES.indexOf(character)) * 2) % MODULUS;
  return VALUES.charAt((MODULUS + 1 - sum) % MODULUS);
}
