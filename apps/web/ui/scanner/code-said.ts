import { isLabelCode, looksLikeLabelCode, readLabelCode } from '@sprigline/domain';

/** What a code that was read, or typed, leads to. */
export type CodeSaid =
  | { readonly is: 'label'; readonly code: string }
  /** Another page of this install, such as a printed list. */
  | { readonly is: 'page'; readonly path: string }
  /** An address that is none of ours. */
  | { readonly is: 'elsewhere'; readonly host: string }
  /** A code of ours in form, with a wrong character in it; or a label of somebody's own from before, which only whoever knows all labels can tell. */
  | { readonly is: 'mistyped'; readonly code: string }
  /** Empty, too long, or with signs that no label has. */
  | { readonly is: 'nothing' };

/** As long as a label may be. */
const LONGEST = 40;
const NOTHING: CodeSaid = { is: 'nothing' };

/**
 * Reads the address of a label (`https://plants.example.org/l/K58Y9J69`, in small letters or in capitals), the address of
 * another page of ours, or a bare code.
 *
 * A phone may know this install by another name than the paper does, so several addresses are ours. Ports tell installs
 * apart and schemes don't: paper may say http where a proxy says https.
 *
 * @param read as the camera, the scanner or the keyboard gave it
 * @param ours addresses of this install, such as `https://plants.example.org`
 */
export function codeSaid(read: string, ours: readonly string[]): CodeSaid {
  const told = read.trim();
  const address = addressIn(told);
  if (!address) return asCode(told);
  if (!ours.some((one) => addressIn(one)?.host === address.host)) return { is: 'elsewhere', host: address.host };
  // `//elsewhere` would lead there, though the address is ours.
  if (address.pathname.startsWith('//')) return NOTHING;
  const label = /^\/l\/([^/]+)\/?$/i.exec(address.pathname)?.[1];
  return label === undefined ? { is: 'page', path: `${address.pathname}${address.search}` } : asCode(withoutPercents(label));
}

function addressIn(told: string): URL | undefined {
  if (!/^https?:\/\//i.test(told)) return undefined;
  try {
    return new URL(told);
  } catch {
    return undefined;
  }
}

/** A code of a roll in the form that it is printed in; any other label, such as `A-12`, as it was told. */
function asCode(told: string): CodeSaid {
  const code = told.trim();
  // Letters, figures and what people put between them; a text message, a tab or a bracket is no label.
  if (code === '' || code.length > LONGEST || !/^[\p{L}\p{N}][\p{L}\p{N} ._#/+-]*$/u.test(code)) return NOTHING;
  if (isLabelCode(code) || !looksLikeLabelCode(code)) return { is: 'label', code };
  try {
    return { is: 'label', code: readLabelCode(code) };
  } catch {
    return { is: 'mistyped', code };
  }
}

function withoutPercents(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
