import { dirname, join } from 'node:path';
import { Font } from '@react-pdf/renderer';

// Found by the package's own name, wherever the installer put it. Asked of Node behind the bundler's back: it would
// put a number of its own in the place of the path, and the letters are read from the disk.
const { createRequire } = process.getBuiltinModule('node:module');
const files = join(dirname(createRequire(import.meta.url).resolve('@fontsource/atkinson-hyperlegible-next/package.json')), 'files');

function register(family: string, subset: string): string {
  const fileOf = (weight: number, style: string) => join(files, `atkinson-hyperlegible-next-${subset}-${weight}-${style}.woff`);
  Font.register({
    family,
    fonts: [
      { src: fileOf(400, 'normal'), fontWeight: 400 },
      { src: fileOf(400, 'italic'), fontWeight: 400, fontStyle: 'italic' },
      { src: fileOf(700, 'normal'), fontWeight: 700 },
      { src: fileOf(700, 'italic'), fontWeight: 700, fontStyle: 'italic' },
    ],
  });
  return family;
}

/** The screens' typeface for paper too, embedded, so that a print shop needs nothing; letters of the second where the first has none. */
export const FAMILIES = [register('Hyperlegible', 'latin'), register('Hyperlegible more', 'latin-ext')];

// Labels and names are never broken by a hyphen: a code in two halves is another code.
Font.registerHyphenationCallback((word) => [word]);
