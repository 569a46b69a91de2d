import type { UnitOfWork } from '../../database/unit-of-work.ts';

/** Up to so many rows a plan made for any number of them is good enough; making one takes longer than running it. */
const FEW = 200;

type Row = Readonly<Record<string, unknown>>;
/** Columns with their types, without programme_id, which every table of a tenant begins with. */
export type Columns = Readonly<Record<string, string>>;

/**
 * Many inserts and deletes as one statement, hence one round trip however long the lists.
 *
 * Its parts all see the database as it was before, so no two of them may be about
 * one row. Foreign keys are looked at when all of them are done.
 */
export class Statement {
  readonly #parts: string[] = [];
  readonly #values: unknown[];
  #rows = 0;

  constructor(programmeId: string) {
    this.#values = [programmeId];
  }

  insert(table: string, columns: Columns, rows: readonly Row[], onConflict = ''): this {
    const names = Object.keys(columns).join(', ');
    return this.#add(rows, (from) => `INSERT INTO ${table} (programme_id, ${names}) SELECT $1, ${names} FROM ${from(columns)} ${onConflict}`);
  }

  /** Inserts, or takes over all columns where the row is there. */
  put(table: string, key: Columns, columns: Columns, rows: readonly Row[]): this {
    const set = Object.keys(columns).map((name) => `${name} = excluded.${name}`).join(', ');
    return this.insert(table, { ...key, ...columns }, rows, `ON CONFLICT (programme_id, ${Object.keys(key).join(', ')}) DO UPDATE SET ${set}`);
  }

  /** @param where a condition on `t`, the table, and `x`, the rows given */
  delete(table: string, columns: Columns, rows: readonly Row[], where: string): this {
    return this.#add(rows, (from) => `DELETE FROM ${table} t USING ${from(columns)} WHERE t.programme_id = $1 AND ${where}`);
  }

  async run(sql: UnitOfWork): Promise<void> {
    const [last, ...others] = this.#parts.toReversed();
    if (last === undefined) return;
    const named = others.reverse().map((part, index) => `part_${index} AS (${part})`);
    const text = `${named.length > 0 ? `WITH ${named.join(',\n')}\n` : ''}${last}`;
    await (this.#rows > FEW ? sql.rows(text, this.#values) : sql.prepared(text, this.#values));
  }

  #add(rows: readonly Row[], part: (from: (columns: Columns) => string) => string): this {
    if (rows.length === 0) return this;
    this.#rows += rows.length;
    this.#values.push(JSON.stringify(rows));
    const place = `$${this.#values.length}::json`;
    this.#parts.push(part((columns) => `json_to_recordset(${place}) AS x(${Object.entries(columns).map((column) => column.join(' ')).join(', ')})`));
    return this;
  }
}
