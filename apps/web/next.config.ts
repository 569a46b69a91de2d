import { join } from 'node:path';
import type { NextConfig } from 'next';
import createNextIntlPlugin from 'next-intl/plugin';

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
  reactStrictMode: true,
  // `npm run types` checks them, of every workspace; whoever only starts the product need not wait for it twice.
  typescript: { ignoreBuildErrors: true },
  // The workspaces' lock file stands at the top of the repository.
  turbopack: { root: join(import.meta.dirname, '../..') },
  // Pictures are our own and few; an optimiser would be one more thing to run.
  images: { unoptimized: true },
};

export default withWords(config);
