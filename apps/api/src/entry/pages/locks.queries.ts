import type { UnitOfWork } from '../../database/unit-of-work.ts';

/**
 * Each programme has this many locks, and an id falls on one of them: enough that two
 * people seldom wait for each other without need, few enough for one shared table of locks.
 */
const LOCKS = 256;

/** Long enough for a crowd at one tray, too short to keep a connection for a sheet of thousands of rows. */
const LOCK_WAIT_MS = 10_000;

/**
 * What writes looks up each thing by its key, whatever the programme. Left to itself the database makes a plan for each
 * programme anew, which takes longer than the work; and for one that it has not counted yet, it expects a single row
 * and reads all entries of that programme for each that it looks up.
 */
const PLANS = 'SET LOCAL plan_cache_mode = force_generic_plan';

/**
 * Holds batches, entries and labels until the transaction ends, whether they are
 * there yet or not: what comes first must be seen by what names it later.
 *
 * Always taken in one order, so that nobody waits in a circle. Asked again with
 * more ids, it first lets go of all it held, for the same reason.
 *
 * @throws DomainError `http/busy` (by the unit of work) when somebody holds them for too long
 */
export async function lock(sql: UnitOfWork, programmeId: string, ids: Iterable<string>, isFirst = true): Promise<void> {
  const numbers = [...new Set([...ids].map(numberOf))].sort((a, b) => a - b);
  // Text, not parameters, since several statements go at once; every value is a number made here.
  await sql.rows(`${isFirst ? `SET LOCAL lock_timeout = ${LOCK_WAIT_MS}; ${PLANS}; SAVEPOINT unlocked` : 'ROLLBACK TO SAVEPOINT unlocked'};
    SELECT pg_advisory_xact_lock(${hash(programmeId)}, n) FROM unnest('{${numbers.join(',')}}'::int[]) n`);
}

/** All of a programme at once: for a sheet of thousands of rows. Logging waits until it is written. */
export async function lockAll(sql: UnitOfWork, programmeId: string): Promise<void> {
  await sql.rows(LOCK_ALL, locksOf(programmeId));
}

export const LOCK_ALL = 'SELECT pg_advisory_xact_lock($1, n) FROM generate_series(0, $2 - 1) n';

/** The values that LOCK_ALL takes. */
export const locksOf = (programmeId: string): [number, number] => [hash(programmeId), LOCKS];

const numberOf = (id: string): number => (hash(id) >>> 0) % LOCKS;

/** FNV-1a, 32 bits signed: spreads well, and is the same on every machine. */
function hash(text: string): number {
  let sum = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) sum = Math.imul(sum ^ text.charCodeAt(index), 0x01000193);
  return sum | 0;
}
