/** The two papers of the world's printers (ISO 216; ANSI/ASME Y14.1). */
export const PAPERS = ['A4', 'LETTER'] as const;
export type Paper = (typeof PAPERS)[number];

/** The paper named in an address, `?paper=letter`; A4 where none is, or one that nobody has. */
export function paperOf(address: URLSearchParams): Paper {
  const named = address.get('paper')?.toUpperCase();
  return PAPERS.find((paper) => paper === named) ?? 'A4';
}
