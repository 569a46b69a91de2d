import { Font } from '@react-pdf/renderer';
import { fontFile } from './font-file.ts';

const STYLES = [[400, 'normal'], [400, 'italic'], [700, 'normal'], [700, 'italic']] as const;

function register(family: string, subset: string): string {
  Font.register({ family, fonts: STYLES.map(([fontWeight, fontStyle]) => ({ src: fontFile(subset, fontWeight, fontStyle), fontWeight, fontStyle })) });
  return family;
}

/** The screens' typeface for paper too, embedded, so that a print shop needs nothing; letters of the second where the first has none. */
export const FAMILIES = [register('Hyperlegible', 'latin'), register('Hyperlegible more', 'latin-ext')];

// Labels and names are never broken by a hyphen: a code in two halves is another code.
Font.registerHyphenationCallback((word) => [word]);

let known: Promise<unknown> | undefined;

/**
 * Asks each font for each of its letters, once. The font library keeps a letter as it met it first, and one that came
 * as a part of another (the dot of a colon, the e of an é) has no name: on every later paper it would be drawn, but
 * nobody could find it, copy it or have it read aloud.
 */
export const lettersAreKnown = (): Promise<unknown> =>
  (known ??= Promise.all(FAMILIES.flatMap((fontFamily) => STYLES.map(async ([fontWeight, fontStyle]) => {
    const font = { fontFamily, fontWeight, fontStyle };
    await Font.load(font);
    const letters = Font.getFont(font).data;
    letters?.characterSet.forEach((letter: number) => letters.glyphForCodePoint(letter));
  }))));
