import { dayOfCell } from './day-of-cell.ts';
import { plainSpelling, tidySpelling } from './plain-spelling.ts';
import type { SheetAct, SheetFact, SheetFault, SheetFaultCode, SheetField, SheetPlan, SpeltField } from './sheet.ts';

/** Longest text that a cell may hold; notes may be longer. */
const LONGEST = 200;
const LONGEST_NOTE = 4_000;
/** More plants than this in one row is a slip of the finger. */
const MOST_PLANTS = 1_000_000;

/** Reasons for throwing out that say the tray was over. */
const NO_ROOTS = new Set(['no roots', 'no root', 'not rooted', 'unrooted']);

const NEEDS_PLACE: ReadonlySet<SheetAct> = new Set(['stuck', 'lifted', 'potted', 'planted', 'moved']);
const NEEDS_TO_LABEL: ReadonlySet<SheetAct> = new Set(['lifted', 'potted', 'planted']);
/** A count of none is a count; none stuck, dead or gone is a row about nothing. */
const MAY_BE_NONE: ReadonlySet<SheetAct> = new Set(['counted']);

/**
 * Reads one row of a sheet, telling every fault in it at once.
 *
 * @param cells the row's cells as text
 * @param row its number as a spreadsheet shows it
 * @returns the fact, or the faults that keep it from being one
 */
export function readRow(cells: readonly string[], row: number, plan: SheetPlan): { fact?: SheetFact; faults: SheetFault[] } {
  const faults: SheetFault[] = [];
  const cell = (field: SheetField): string => cells[plan.columns[field] ?? -1] ?? '';
  const blame = (field: SheetField, code: SheetFaultCode): void => {
    faults.push({ row, field, code, ...(cell(field) && { seen: cell(field).slice(0, 60) }) });
  };

  for (const field of Object.keys(plan.columns) as SheetField[]) blameCell(cell(field), field, blame);
  const day = readDay(cell('date'), plan, blame);
  const act = readAct(cell('what'), cell('cause'), plan, blame);
  const label = labelOf(cell('label'));
  if (!label) blame('label', 'label-missing');
  const n = readCount(cell('count'), 'count', act, blame);
  const rooted = cell('rooted').trim() === '' ? undefined : readCount(cell('rooted'), 'rooted', 'counted', blame);
  if (n !== undefined && rooted !== undefined && act === 'counted' && rooted > n) blame('rooted', 'rooted-above-alive');
  const toLabel = labelOf(cell('toLabel'));
  if (act && NEEDS_TO_LABEL.has(act) && !toLabel) blame('toLabel', 'to-label-missing');
  if (toLabel && toLabel === label) blame('toLabel', 'to-label-same');
  if (act && NEEDS_PLACE.has(act) && !cell('place').trim()) blame('place', 'place-missing');
  if (act === 'stuck' && !cell('donor').trim()) blame('donor', 'donor-missing');

  if (faults.length > 0 || !day || !act || n === undefined) return { faults };
  const told = { donor: spelt('donor'), stand: spelt('stand'), species: spelt('species'), place: spelt('place'), recipe: spelt('recipe'), cause: spelt('cause') };
  return { faults, fact: { row, act, day, label, n, rooted, toLabel: toLabel || undefined, ...told, notes: tidySpelling(cell('notes')) || undefined } };

  function spelt(field: SpeltField): string | undefined {
    const written = tidySpelling(cell(field));
    return written === '' ? undefined : (plan.spellings[field]?.[plainSpelling(written)] ?? written);
  }
}

type Blame = (field: SheetField, code: SheetFaultCode) => void;

/** Labels are codes: their capitals and spaces mean nothing. */
export const labelOf = (cell: string): string => tidySpelling(cell).toUpperCase();

function blameCell(text: string, field: SheetField, blame: Blame): void {
  // A formula would be worked out by the next spreadsheet that opens an export.
  if (/^\s*=/.test(text)) blame(field, 'formula');
  if (text.length > (field === 'notes' ? LONGEST_NOTE : LONGEST)) blame(field, 'too-long');
}

function readDay(text: string, plan: SheetPlan, blame: Blame): string | undefined {
  if (text.trim() === '') return void blame('date', 'day-missing');
  const day = dayOfCell(text, plan.dayOrder);
  if (!day) blame('date', 'day-unreadable');
  return day;
}

function readAct(word: string, cause: string, plan: SheetPlan, blame: Blame): SheetAct | undefined {
  if (word.trim() === '') return void blame('what', 'act-missing');
  const act = plan.acts[plainSpelling(word)];
  if (!act) return void blame('what', 'act-unknown');
  // Thrown out because nothing rooted is the verdict over a tray, not a death.
  return act === 'thrownOut' && NO_ROOTS.has(plainSpelling(cause)) ? 'called' : act;
}

function readCount(text: string, field: 'count' | 'rooted', act: SheetAct | undefined, blame: Blame): number | undefined {
  const digits = text.trim().replace(/\.0+$/, '');
  if (digits === '') return void blame(field, 'count-missing');
  if (!/^\d+$/.test(digits)) return void blame(field, field === 'rooted' ? 'rooted-unreadable' : 'count-unreadable');
  const n = Number(digits);
  if (n > MOST_PLANTS) return void blame(field, 'count-too-large');
  if (n === 0 && act && !MAY_BE_NONE.has(act)) return void blame(field, 'count-unreadable');
  return n;
}
