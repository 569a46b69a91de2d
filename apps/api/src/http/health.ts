import type { FastifyInstance } from 'fastify';
import type { Database } from '../database/database.ts';

/** Outside the API and the pages: for whoever watches over the process. */
const ALIVE = '/healthz';
const READY = '/readyz';

/** A watcher that waits longer calls it down by itself. */
const PATIENCE_MS = 2_000;

export const isForWatchers = (url: string): boolean => url === ALIVE || url === READY;

/**
 * `/healthz`: the process lives. It says nothing about the database, so that an outage of that restarts nothing here.
 * `/readyz`: the database answers too, and has every migration that it had at the start, when the launcher compared
 * them with the code. 503 otherwise: send nobody here just now.
 */
export async function mountHealth(fastify: FastifyInstance, database: Database): Promise<void> {
  const atStart = await newestMigration(database);
  fastify.get(ALIVE, () => 'up\n');
  fastify.get(READY, async (_request, reply) => {
    const newest = await Promise.race([newestMigration(database), nothingAfter(PATIENCE_MS)]).catch(() => undefined);
    if (newest !== undefined && newest >= atStart) return 'ready\n';
    return reply.status(503).send(newest === undefined ? 'the database does not answer\n' : 'the database lacks a migration\n');
  });
}

/** Names begin with their time, so the greatest is the newest. Empty where there is none. */
async function newestMigration(database: Database): Promise<string> {
  const { newest } = await database.outsideProgrammes((sql) => sql.one<{ newest: string }>(`SELECT coalesce(max(name), '') AS newest FROM schema_migration`));
  return newest;
}

const nothingAfter = (ms: number): Promise<undefined> => new Promise((resolve) => setTimeout(resolve, ms, undefined).unref());
