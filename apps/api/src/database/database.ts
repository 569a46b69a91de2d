import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import pg from 'pg';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { busy, LOCK_NOT_FREE } from './busy.ts';
import { beginFor, type Context } from './context.ts';
import { UnitOfWork } from './unit-of-work.ts';

// Days stay text: a Date would put them into some zone. Counts of rows fit a double.
pg.types.setTypeParser(pg.types.builtins.DATE, (day) => day);
pg.types.setTypeParser(pg.types.builtins.INT8, Number);
pg.types.setTypeParser(pg.types.builtins.NUMERIC, Number);

/** Serialisation failures and deadlocks: the whole transaction is tried again. */
const TRY_AGAIN = new Set(['40001', '40P01']);
const TRIES = 5;

/** The ledger's door to PostgreSQL. Nobody gets a raw client: only units of work. */
@Injectable()
export class Database implements OnApplicationShutdown {
  readonly #pool: pg.Pool;

  constructor(@Inject(SETTINGS) private readonly settings: Settings) {
    this.#pool = new pg.Pool({ connectionString: settings.databaseUrls.app, max: 10 });
    // An idle connection that breaks (a restart of PostgreSQL) is replaced by the pool; without a listener it would end the process.
    this.#pool.on('error', () => undefined);
  }

  /**
   * One request is one unit of work: everything in it is written, or nothing.
   *
   * Tried again when PostgreSQL says that two transactions crossed, so `work` must
   * have no effect outside the database.
   *
   * @throws DomainError `http/busy` when a lock is not free in the time that the work allows
   */
  async inTransaction<T>(context: Context, work: (sql: UnitOfWork) => Promise<T>): Promise<T> {
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await this.#once(beginFor(context, this.settings.presentTime?.()), work);
      } catch (error) {
        const code = error instanceof pg.DatabaseError ? (error.code ?? '') : '';
        if (code === LOCK_NOT_FREE) throw busy();
        if (attempt >= TRIES || !TRY_AGAIN.has(code)) throw error;
      }
    }
  }

  /** Before the programme is known: only the look-up functions answer anything. */
  async outsideProgrammes<T>(work: (sql: UnitOfWork) => Promise<T>): Promise<T> {
    return this.#once('BEGIN', work);
  }

  async #once<T>(begin: string, work: (sql: UnitOfWork) => Promise<T>): Promise<T> {
    const client = await this.#pool.connect();
    let broken: Error | undefined;
    try {
      await client.query(begin);
      const result = await work(new UnitOfWork(client));
      await client.query('COMMIT');
      return result;
    } catch (error) {
      await client.query('ROLLBACK').catch((lost: Error) => {
        broken = lost;
      });
      throw error;
    } finally {
      client.release(broken);
    }
  }

  async onApplicationShutdown(): Promise<void> {
    await this.#pool.end();
  }
}
