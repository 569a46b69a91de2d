import type { UnitOfWork } from '../database/unit-of-work.ts';
import {
  FLAG, FLAG_KEY, IN_SEQUENCE, MOVEMENT, PARTNER_KEY, type Projected, projectedOf, type Row, STATE, STAY, TALLY_COUNTS, type TallyRow,
} from '../entry/projected.queries.ts';
import type { Finding } from './finding.ts';
import { STAND_PARTNERS } from '../entry/stand-partners.queries.ts';

/** Each table of what follows, with its columns in the order in which rows are compared. */
const TABLES = {
  batch_state: ['batch_id', ...Object.keys(STATE)],
  movement: Object.keys({ ...IN_SEQUENCE, ...MOVEMENT }),
  stay: Object.keys({ ...IN_SEQUENCE, ...STAY }),
  flag: Object.keys({ ...FLAG_KEY, ...FLAG }),
  batch_partner: Object.keys(PARTNER_KEY),
} as const;
type Table = keyof typeof TABLES;

/** Compares what is written with what follows from the entries by a full replay. */
export async function differingBooks(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const findings: Finding[] = [];
  const tallies = new Map<string, TallyRow>();
  const stand = await standRows(sql, programmeId);
  for await (const projected of projectedOf(sql, programmeId)) {
    const expected = byTable(projected, stand);
    for (const table of Object.keys(TABLES) as Table[]) {
      findings.push(...differing(programmeId, table, expected[table], await written(sql, programmeId, table, projected)));
    }
    for (const row of projected.tallies) addTally(tallies, row);
  }
  return [...findings, ...(await differingTallies(sql, programmeId, tallies))];
}

function byTable({ rows }: Projected, stand: ReadonlyMap<string, readonly Row[]>): Record<Table, Row[]> {
  return {
    batch_state: rows.map(({ state }) => state),
    movement: rows.flatMap(({ movements }) => movements),
    stay: rows.flatMap(({ stays }) => stays),
    flag: rows.flatMap(({ flags }) => flags),
    batch_partner: rows.flatMap(({ batch, partners }) => [...partners.filter((row) => row['relation'] !== 'stand'), ...(stand.get(batch.id) ?? [])]),
  };
}

async function standRows(sql: UnitOfWork, programmeId: string): Promise<Map<string, Row[]>> {
  const all = new Map<string, Row[]>();
  for (const row of await sql.rows<{ batch_id: string; partner_id: string; relation: string }>(STAND_PARTNERS, [programmeId])) {
    all.set(row.batch_id, [...(all.get(row.batch_id) ?? []), row]);
  }
  return all;
}

async function written(sql: UnitOfWork, programmeId: string, table: Table, { rows }: Projected): Promise<Row[]> {
  const columns = TABLES[table].join(', ');
  const { all } = await sql.one<{ all: Row[] }>(
    `SELECT coalesce(json_agg(x), '[]') AS all FROM (SELECT ${columns} FROM ${table} WHERE programme_id = $1 AND batch_id = ANY ($2)) x`,
    [programmeId, rows.map(({ batch }) => batch.id)],
  );
  return all;
}

function differing(programmeId: string, table: Table, expected: readonly Row[], found: readonly Row[]): Finding[] {
  const textOf = (row: Row): string => JSON.stringify(TABLES[table].map((column) => row[column] ?? null));
  const [must, is] = [new Map(expected.map((row) => [textOf(row), row])), new Map(found.map((row) => [textOf(row), row]))];
  const say = (row: Row, what: string): Finding => ({
    rule: 'books-differ-from-entries', programmeId, sentence: `The ${table} of batch ${row['batch_id']} ${what}: ${TABLES[table].slice(1).map((column) => `${column} ${row[column] ?? '-'}`).join(', ')}.`,
  });
  return [
    ...[...is].filter(([text]) => !must.has(text)).map(([, row]) => say(row, 'does not follow from its entries')),
    ...[...must].filter(([text]) => !is.has(text)).map(([, row]) => say(row, 'follows from its entries and is not there')),
  ];
}

function addTally(tallies: Map<string, TallyRow>, row: TallyRow): void {
  const key = `${row.sticking_id} ${row.stage}`;
  const sum = tallies.get(key);
  const counts = TALLY_COUNTS.map((name) => [name, Number(sum?.[name] ?? 0) + Number(row[name])]);
  const causes = new Set([...Object.keys(sum?.died_of ?? {}), ...Object.keys(row.died_of)]);
  const diedOf = [...causes].map((cause) => [cause, (sum?.died_of[cause] ?? 0) + (row.died_of[cause] ?? 0)]);
  tallies.set(key, { sticking_id: row.sticking_id, stage: row.stage, ...Object.fromEntries(counts), died_of: Object.fromEntries(diedOf) });
}

async function differingTallies(sql: UnitOfWork, programmeId: string, tallies: ReadonlyMap<string, TallyRow>): Promise<Finding[]> {
  const rows = await sql.rows<TallyRow>(`SELECT sticking_id, stage, ${TALLY_COUNTS.join(', ')}, died_of FROM tally WHERE programme_id = $1`, [programmeId]);
  const found = new Map(rows.map((row) => [`${row.sticking_id} ${row.stage}`, row]));
  return [...new Set([...tallies.keys(), ...found.keys()])].flatMap((key) => {
    const [must, is] = [tallyText(tallies.get(key)), tallyText(found.get(key))];
    return must === is ? [] : [{ rule: 'books-differ-from-entries' as const, programmeId, sentence: `The tally of sticking ${key.replace(' ', ' at stage ')} says ${is}, its entries say ${must}.` }];
  });
}

/** A row of nothing is as good as no row. */
function tallyText(row: TallyRow | undefined): string {
  const counts = TALLY_COUNTS.map((name) => [name, Number(row?.[name] ?? 0)] as const);
  const causes = Object.entries(row?.died_of ?? {}).map(([cause, n]) => [`died of ${cause}`, n] as const);
  const told = [...counts, ...causes].filter(([, n]) => n !== 0).map(([name, n]) => `${name} ${n}`);
  return told.length > 0 ? told.sort().join(', ') : 'nothing';
}
