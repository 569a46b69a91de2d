import { createHash } from 'node:crypto';
import type pg from 'pg';

type Row = Record<string, unknown>;

/** SQL inside one transaction, seen by one caller. Closed when the transaction ends. */
export class UnitOfWork {
  readonly #client: pg.ClientBase;
  /** Round trips to the database so far, for the budget of a request. */
  roundTrips = 0;

  constructor(client: pg.ClientBase) {
    this.#client = client;
  }

  /** All rows. The type of a row is the caller's promise about its own SQL. */
  async rows<R extends Row>(text: string, values: readonly unknown[] = []): Promise<R[]> {
    this.roundTrips += 1;
    const { rows } = await this.#client.query<R>(text, [...values]);
    return rows;
  }

  /**
   * The same for a long statement that comes again and again: the database plans it once
   * a connection. Its text must be one of few.
   */
  async prepared<R extends Row>(text: string, values: readonly unknown[]): Promise<R[]> {
    this.roundTrips += 1;
    const { rows } = await this.#client.query<R>({ name: nameOf(text), text, values: [...values] });
    return rows;
  }

  /** The first row, or nothing. */
  async maybe<R extends Row>(text: string, values: readonly unknown[] = []): Promise<R | undefined> {
    return (await this.rows<R>(text, values))[0];
  }

  /** The one row that there must be. */
  async one<R extends Row>(text: string, values: readonly unknown[] = []): Promise<R> {
    const row = await this.maybe<R>(text, values);
    if (!row) throw new Error('a query that always answers a row answered none');
    return row;
  }
}

const names = new Map<string, string>();

/** PostgreSQL keeps 63 bytes of a name, so the text itself cannot be it. */
function nameOf(text: string): string {
  const known = names.get(text);
  if (known !== undefined) return known;

  const name = createHash('sha256').update(text).digest('base64url');
  names.set(text, name);
  return name;
}
