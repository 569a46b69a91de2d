import { bootstrapRoles, databaseGrants, migrate } from '@sprigline/prisma/runner';
import pg from 'pg';
import type { TestCluster } from './test-cluster.ts';

export const TEMPLATE = 'template_sprigline';

/** Where tests find the server: plain text, because it travels from one process to others. */
export interface ServerAddress {
  readonly superuser: string;
  readonly owner: string;
  readonly app: string;
  readonly auth: string;
  readonly keeper: string;
}

/** Migrates one database that all others are copied from. */
export async function makeTemplate(cluster: TestCluster): Promise<ServerAddress> {
  const superuser = cluster.url('superuser', 'postgres');
  await bootstrapRoles({ url: superuser, database: TEMPLATE, logins: cluster.logins });
  await migrate({ url: cluster.url('owner', TEMPLATE) });
  return {
    superuser,
    owner: cluster.url('owner', TEMPLATE),
    app: cluster.url('app', TEMPLATE),
    auth: cluster.url('auth', TEMPLATE),
    keeper: cluster.url('keeper', TEMPLATE),
  };
}

/** A copy takes about a tenth of a second, however many migrations there are. */
export async function copyTemplate(address: ServerAddress, database: string): Promise<void> {
  const client = new pg.Client({ connectionString: address.superuser });
  await client.connect();
  try {
    const owner = pg.escapeIdentifier(decodeURIComponent(new URL(address.owner).username));
    await client.query(`CREATE DATABASE ${pg.escapeIdentifier(database)} TEMPLATE ${TEMPLATE} OWNER ${owner}`);
    for (const statement of databaseGrants(database)) await client.query(statement);
  } finally {
    await client.end();
  }
}
