import { defineConfig } from 'prisma/config';

/** Only for `prisma generate` and `validate`: migrations have a runner of their own. */
export default defineConfig({ schema: 'schema' });
