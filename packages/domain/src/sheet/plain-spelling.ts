/**
 * A spelling without what hands do differently: outer and double spaces, capitals, kinds of
 * apostrophe and dash. Two cells with one plain spelling are taken to mean the same thing.
 */
export const plainSpelling = (cell: string): string =>
  cell
    .normalize('NFC')
    .replace(/[‘’ʼ]/g, "'")
    .replace(/[‐-―]/g, '-')
    .trim()
    .replace(/\s+/g, ' ')
    .toLowerCase();

/** As written, but with single spaces and none outside. */
export const tidySpelling = (cell: string): string => cell.normalize('NFC').trim().replace(/\s+/g, ' ');
