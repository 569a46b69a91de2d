/** Text that is safe to stand in a page. */
export interface Html {
  readonly safe: string;
}

const NAMED: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

type Part = Html | string | false | undefined | readonly Html[];

/** A piece of a page. What is put in as plain text is made safe; a false or missing part is left out. */
export const html = (pieces: TemplateStringsArray, ...parts: readonly Part[]): Html => ({ safe: pieces.map((piece, at) => piece + said(parts[at])).join('') });

export const joined = (parts: readonly Html[], between: string): Html => ({ safe: parts.map(({ safe }) => safe).join(between) });

/** Only for text that was written by hand in this repository, such as a style sheet. */
export const asItIs = (safe: string): Html => ({ safe });

function said(part: Part): string {
  if (part === undefined || part === false) return '';
  if (typeof part === 'string') return part.replaceAll(/[&<>"']/g, (letter) => NAMED[letter] ?? letter);
  return 'safe' in part ? part.safe : joined(part, '').safe;
}
