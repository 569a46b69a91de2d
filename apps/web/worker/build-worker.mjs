import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { fieldAssets, readerOf } from './field-assets.mjs';

const web = join(import.meta.dirname, '..');
const made = join(web, '.next');

/** Makes the service worker out of its source and of what the build made, so that another build is another worker. */
const { framework, own, lazy, styles, fonts } = fieldAssets(made);
await build({
  entryPoints: [join(web, 'worker/service-worker.ts')],
  outfile: join(web, 'public/sw.js'),
  bundle: true,
  minify: true,
  format: 'iife',
  target: 'es2022',
  define: {
    BUILD: JSON.stringify(readFileSync(join(made, 'BUILD_ID'), 'utf8').trim()),
    ASSETS: JSON.stringify([...framework, ...own, ...lazy, ...styles, ...fonts].map((path) => `/_next/${path}`).concat('/icon.svg')),
    READER: JSON.stringify(readerOf(join(web, 'public'))),
    'process.env.NODE_ENV': '"production"',
  },
});
