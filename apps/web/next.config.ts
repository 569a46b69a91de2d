import { copyFileSync, existsSync, mkdirSync, readFileSync, renameSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { NextConfig } from 'next';
import createNextIntlPlugin from 'next-intl/plugin';

/**
 * Puts the reader of labels (WebAssembly) where pages of ours find it, under a name with its version. Whoever builds or starts
 * the web app comes by here; the second time there is nothing left to do.
 */
function placeReader(): void {
  const from = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  const { version } = JSON.parse(readFileSync(join(dirname(from), '../../package.json'), 'utf8')) as { version: string };
  const to = join(import.meta.dirname, 'public/scan', `reader-${version}.wasm`);
  if (existsSync(to)) return;
  mkdirSync(dirname(to), { recursive: true });
  // Whole or not at all, though several processes may come by at once.
  const half = `${to}.${process.pid}`;
  copyFileSync(from, half);
  renameSync(half, to);
}

placeReader();

const withWords = createNextIntlPlugin('./messages/request.ts');

const config: NextConfig = {
  poweredByHeader: false,
  experimental: {
    // `forbidden()` shows app/forbidden.tsx and answers 403.
    authInterrupts: true,
    // A log sheet may have 50 MB, and the form around it a little more; the API has the last word.
    serverActions: { bodySizeLimit: '51mb' },
    proxyClientMaxBodySize: '51mb',
  },
  // Its name has its version in it, so a copy is good for ever.
  headers: () => Promise.resolve([{ source: '/scan/:file*', headers: [{ key: 'Cache-Control', value: 'public, max-age=31536000, immutable' }, { key: 'X-Content-Type-Options', value: 'nosniff' }] }]),
  reactStrictMode: true,
  // `npm run types` checks them, of every workspace; whoever only starts the product need not wait for it twice.
  typescript: { ignoreBuildErrors: true },
  // The workspaces' lock file stands at the top of the repository.
  turbopack: {
    root: join(import.meta.dirname, '../..'),
    // The sealing library names it for old runtimes; a browser seals by its own, and a phone would keep 135 kB of a stand-in.
    resolveAlias: { crypto: { browser: './worker/no-node-crypto.ts' } },
  },
  // Pictures are our own and few; an optimiser would be one more thing to run.
  images: { unoptimized: true },
};

export default withWords(config);
