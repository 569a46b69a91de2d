import { dirname, join } from 'node:path';

// Found by the package's own name, wherever the installer put it. Asked of Node behind the bundler's back: it would
// put a number of its own in the place of the path, and the letters are read from the disk.
const { createRequire } = process.getBuiltinModule('node:module');
const files = join(dirname(createRequire(import.meta.url).resolve('@fontsource/atkinson-hyperlegible-next/package.json')), 'files');

/** Where the letters of the screens' typeface lie, for paper. */
export const fontFile = (subset: string, weight: number, style: string): string => join(files, `atkinson-hyperlegible-next-${subset}-${weight}-${style}.woff`);
