import type { ImportPlan, SheetFault as ToldFault } from '@sprigline/contract';
import {
  checkSheet, DomainError, plainSpelling, readRow, sheetChanges, type EarlierRow, type SheetChanges, type SheetFact, type SheetFault, type SheetPlan,
} from '@sprigline/domain';
import { knownToCheck, type KnownNames } from './known.queries.ts';
import { NEEDED_FIELDS } from './sheet-guess.ts';
import type { SheetTable } from './sheet-table.ts';

export interface SheetReading {
  readonly faults: readonly SheetFault[];
  readonly facts: readonly SheetFact[];
  readonly changes: SheetChanges;
}

/** Breath for other requests while a long sheet is read. */
const ROWS_A_BREATH = 2_000;

/**
 * Every row of a sheet under a plan: what it says, what is wrong with it, and
 * what is new since the last time.
 *
 * @param today the day in the programme's zone
 */
export async function readSheet(
  table: SheetTable,
  plan: ImportPlan,
  known: KnownNames,
  earlier: readonly EarlierRow[],
  today: string,
): Promise<SheetReading> {
  const facts: SheetFact[] = [];
  const faults: SheetFault[] = [];
  for (const [index, { row, cells }] of table.rows.entries()) {
    const read = readRow(cells, row, plan as SheetPlan);
    if (read.fact) facts.push(read.fact);
    faults.push(...read.faults, ...beyondHeading(row, cells, table.headings.length));
    if (index % ROWS_A_BREATH === 0) await new Promise(setImmediate);
  }
  const changes = sheetChanges(facts, earlier);
  faults.push(...checkSheet(facts, knownToCheck(known), today), ...stuckAgain(changes.added, known));
  return { facts, changes, faults: faults.sort((a, b) => a.row - b.row) };
}

/** @throws DomainError `import/column-missing` when the plan leaves out a column that every log needs */
export function refuseWithoutNeededColumns(plan: ImportPlan): void {
  const missing = NEEDED_FIELDS.find((field) => plan.columns[field] === undefined);
  if (missing) throw new DomainError('import/column-missing', `say which column holds ${missing}`, { column: missing });
}

/** Text right of the last heading belongs to no column: nothing may be lost unsaid. */
function beyondHeading(row: number, cells: readonly string[], headings: number): SheetFault[] {
  const seen = cells.slice(headings).find((cell) => cell.trim() !== '');
  return seen === undefined ? [] : [{ row, code: 'cells-beyond-heading', seen: seen.slice(0, 60) }];
}

/** A label that stands on a batch of the programme cannot be stuck anew. */
const stuckAgain = (added: readonly SheetFact[], known: KnownNames): SheetFault[] =>
  added
    .filter((fact) => fact.act === 'stuck' && known.batches.has(fact.label))
    .map((fact) => ({ row: fact.row, field: 'label' as const, code: 'label-stuck-twice' as const, seen: fact.label }));

/** Faults with the heading of the column that they stand in. */
export const faultsToTell = (faults: readonly SheetFault[], plan: ImportPlan, headings: readonly string[]): ToldFault[] =>
  faults.map((fault) => {
    const column = fault.field && plan.columns[fault.field];
    return { ...fault, ...(column !== undefined && { column: headings[column] ?? '' }) };
  });

/** Names in the sheet that the programme does not know yet, each once. */
export function newNames(facts: readonly SheetFact[], known: KnownNames) {
  const places = new Set([...known.places.keys()]);
  const absent = (names: readonly (string | undefined)[], has: (plain: string) => boolean): string[] => {
    const byPlain = new Map(names.filter((name) => name !== undefined).map((name) => [plainSpelling(name), name]));
    return [...byPlain].filter(([plain]) => !has(plain)).map(([, name]) => name).sort();
  };
  return {
    stand: absent(facts.map(({ stand }) => stand), (plain) => known.stands.has(plain)),
    species: absent(facts.map(({ species }) => species), (plain) => known.taxa.has(plain)),
    donor: absent(facts.map(({ donor }) => donor), (plain) => known.donors.has(plain)),
    recipe: absent(facts.map(({ recipe }) => recipe), (plain) => known.recipes.has(plain)),
    place: absent(facts.map(({ place }) => place), (plain) => places.has(plain.replace(/\s*[/>]\s*/g, '/'))),
  };
}
