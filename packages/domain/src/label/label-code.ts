import { DomainError } from '../errors.ts';
import { checkCharacter } from './check-character.ts';

/**
 * What codes are made of: 21 characters that stay apart when small, wet, worn or read aloud from a step away.
 *
 * Left out: what is round (0 O D Q), what is a stroke (1 I L), the letters that pass for digits (B S Z G for 8 5 2 6),
 * U and V for each other, and the vowels A and E, so that no code is a word in any language.
 */
export const LABEL_ALPHABET = '23456789CFHJKMNPRTWXY';

/** Seven that are drawn and the check character: 21^7 draws, of which 21 in 37 keep to the alphabet, leave about a thousand million codes. */
export const LABEL_CODE_LENGTH = 8;

/** Letters that are typed for the one character they pass for. What passes for two, or for none, is not mended. */
const MEANT: Readonly<Record<string, string>> = { B: '8', S: '5', Z: '2' };

const FORM = new RegExp(`^[${LABEL_ALPHABET}]{${LABEL_CODE_LENGTH}}$`);

/** Whether a text is a code as it is printed, and its check character agrees. */
export function isLabelCode(text: string): boolean {
  return FORM.test(text) && checkCharacter(text.slice(0, -1)) === text.at(-1);
}

/** Letters that no code has and that are typed for one that it has, such as G for 6. Vowels and 0 and 1 stand in labels of people’s own. */
const STRAYS = 'DGILOQUV';

/** Eight in a row, or four and four: as codes are printed, in capitals or not. */
const GROUPED = /^[\dA-Z]{4}[\s\-\u2010-\u2015]?[\dA-Z]{4}$/i;

/**
 * Whether somebody who typed this meant a code of ours rather than a label of their own, such as `A-12`: it is written as one
 * is printed, in characters that codes have, of which one may be a letter that passes for another. The check character may still be wrong.
 */
export function looksLikeLabelCode(typed: string): boolean {
  if (!GROUPED.test(typed.trim())) return false;
  const strange = [...asPrinted(typed)].filter((character) => !LABEL_ALPHABET.includes(character));
  return strange.length === 0 || (strange.length === 1 && STRAYS.includes(strange[0] ?? ''));
}

/**
 * Lets pass a code as it is printed, however it was typed, and labels of somebody's own.
 *
 * @throws DomainError `label/mistyped` for what was meant as a code and isn't one
 */
export function refuseMistypedLabel(typed: string): void {
  if (looksLikeLabelCode(typed)) readLabelCode(typed);
}

/**
 * A code as it is printed, from what somebody typed or scanned.
 *
 * Small letters, spaces, dashes and dots are forgiven, and B, S and Z are read as 8, 5 and 2, which are the only ones they can
 * be; the check character stands over that as over all the rest. One wrong character, or two in each other's place, is always
 * noticed; of worse mistakes about one in 37 is not.
 *
 * @throws DomainError `label/mistyped` when it isn't a code: too long or short, a character that no code has, or a wrong check
 */
export function readLabelCode(typed: string): string {
  const code = asPrinted(typed);
  if (!isLabelCode(code)) {
    throw new DomainError('label/mistyped', 'that is not what stands on any label: compare it character by character, or scan it', { typed: typed.slice(0, 60) });
  }
  return code;
}

/**
 * A label as it is kept: a code as it is printed, whatever else as somebody wrote it, without blanks around it.
 * So that a code typed in small letters is on the label that has it, and not beside it.
 */
export function keptLabel(typed: string): string {
  const code = asPrinted(typed);
  return isLabelCode(code) ? code : typed.trim();
}

/** A code for the eye, in two groups of four: `K58Y 9J69`. */
export function shownLabelCode(code: string): string {
  return isLabelCode(code) ? `${code.slice(0, 4)} ${code.slice(4)}` : code;
}

function asPrinted(typed: string): string {
  return typed.toUpperCase().replaceAll(/[\s.\-\u2010-\u2015]/g, '').replaceAll(/[BSZ]/g, (letter) => MEANT[letter] ?? letter);
}
