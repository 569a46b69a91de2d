import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { busy, LOCK_NOT_FREE } from './busy.ts';
import { type Context, settingsFor } from './context.ts';
import { Prisma, PrismaClient } from './generated/client.ts';

/** Plain records inside one transaction, seen by one caller. */
export type Records = Prisma.TransactionClient;

/** Serialisation failures and deadlocks: the whole transaction is tried again. */
const CROSSED = new Set(['40001', '40P01']);
const TRIES = 8;
/** For a connection, and for the whole transaction: longer means that something hangs. */
const WAIT_MS = 15_000;
/** For one lock: shorter, so that a wait ends with an answer that says what to do, and not with the whole transaction. */
const LOCK_WAIT_MS = 5000;

/**
 * The door for plain records: taxa, stands, trips, places and the like.
 *
 * It has connections of its own, so one unit of work goes through one door:
 * either this or the ledger's (database.ts). Nobody gets the raw client.
 */
@Injectable()
export class PrismaDoor implements OnApplicationShutdown {
  readonly #client: PrismaClient;

  constructor(@Inject(SETTINGS) settings: Settings) {
    const adapter = new PrismaPg({ connectionString: settings.databaseUrls.app, max: 5 });
    this.#client = new PrismaClient({ adapter, errorFormat: 'minimal' });
  }

  /**
   * One request is one unit of work: everything in it is written, or nothing.
   * `work` may run again, so it must have no effect outside the database.
   *
   * What was read stays true until it is written: a check on it needs no locks of its own.
   */
  async inTransaction<T>(context: Context, work: (records: Records) => Promise<T>): Promise<T> {
    return this.#tried(context, work, 'RepeatableRead');
  }

  /**
   * The same for work that first waits for a lock, and then has to see what was written
   * while it waited. Whatever it checks must be held by that lock.
   *
   * @throws DomainError `http/busy` when the lock is not free within a few seconds
   */
  async behindALock<T>(context: Context, work: (records: Records) => Promise<T>): Promise<T> {
    const patient = async (records: Records): Promise<T> => {
      await records.$executeRawUnsafe(`SET LOCAL lock_timeout = ${LOCK_WAIT_MS}`);
      return work(records);
    };
    return this.#tried(context, patient, 'ReadCommitted');
  }

  async #tried<T>(context: Context, work: (records: Records) => Promise<T>, isolationLevel: Prisma.TransactionIsolationLevel): Promise<T> {
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await this.#client.$transaction(
          async (records) => {
            await records.$executeRawUnsafe(settingsFor(context));
            return work(records);
          },
          { isolationLevel, maxWait: WAIT_MS, timeout: WAIT_MS },
        );
      } catch (error) {
        if (isTooLong(error)) throw busy();
        if (attempt >= TRIES || !isCrossed(error)) throw error;
      }
    }
  }

  async onApplicationShutdown(): Promise<void> {
    await this.#client.$disconnect();
  }
}

/** Prisma's own code is P2034 for its calls and P2010 for SQL, so the database's code is asked for. */
const isCrossed = (error: unknown): boolean => codesOf(error).some((code) => code === 'P2034' || CROSSED.has(code));

/** A lock that was not free in time, or a transaction that got no connection or no end in time. */
const isTooLong = (error: unknown): boolean => codesOf(error).some((code) => code === LOCK_NOT_FREE || code === 'P2028');

/** What Prisma and the database call it. */
function codesOf(error: unknown): string[] {
  if (!(error instanceof Prisma.PrismaClientKnownRequestError)) return [];
  const meta = error.meta as { driverAdapterError?: { cause?: { originalCode?: string } } } | undefined;
  return [error.code, meta?.driverAdapterError?.cause?.originalCode ?? ''];
}
