import { type Answer, answerTo, type Dead, deadIn } from './answer.ts';
import type { CAUSES } from './dead-panel.tsx';
import { asksRoots, isRoot, type RootMark, rootsTold } from './grid-roots.ts';
import type { Look, Stop } from './stop.ts';

/** What was tapped of one plant: nothing told yet, dead of a cause, gone without a trace, or alive and what of its roots. A plant without a mark was not tapped. */
export type Mark = 'open' | 'gone' | RootMark | (typeof CAUSES)[number];

/** Marks by cell. */
export type Marks = Readonly<Record<string, Mark>>;

/** More plants than the books have, by batch. */
export type Extras = Readonly<Record<string, number>>;

/** A batch that is tapped plant by plant. */
export interface Celled {
  readonly stop: Stop;
  /** Plants that the books have of it, without what was told of it on this round. */
  readonly n: number;
}

export interface Cell {
  readonly key: string;
  readonly batchId: string;
  /** Where the finger goes: the how-manieth plant of its row. The books know rows, and no places within them. */
  readonly at: number;
  readonly isExtra: boolean;
}

export interface GridRow {
  readonly key: string;
  /** Counted from the tray's label; nothing for a batch that stands in no told row. */
  readonly row: number | undefined;
  readonly parts: readonly { readonly stop: Stop; readonly cells: readonly Cell[]; /** The last row of the batch, where one more is put. */ readonly isLast: boolean }[];
}

/** More cells than that are no picture of a tray any more. */
const MOST_CELLS = 400;

/**
 * What of a tray is tapped plant by plant; nothing where it holds more than a finger can follow.
 *
 * @param booksOf plants that the books have, nothing where this phone does not know
 */
export function celledOf(stops: readonly Stop[], placeId: string, booksOf: (batchId: string) => number | undefined): readonly Celled[] {
  const here = stops.filter((stop) => stop.placeId === placeId).map((stop) => ({ stop, n: booksOf(stop.batchId) ?? 0 })).filter(({ n }) => n > 0);
  return here.reduce((sum, { n }) => sum + n, 0) > MOST_CELLS ? [] : here;
}

/** A tray as it stands on the bench: its rows, counted from the label, and in each a cell for each plant. */
export function gridRows(celled: readonly Celled[], extras: Extras): readonly GridRow[] {
  const rows = new Map<string, { readonly row: number | undefined; readonly parts: { stop: Stop; cells: Cell[]; isLast: boolean }[] }>();
  for (const { stop, n } of celled) {
    const told = rowsIn(stop.rows);
    let nth = 0;
    told.forEach((row, at) => {
      const isLast = at === told.length - 1;
      const key = row === undefined ? stop.batchId : `row ${row}`;
      const found = rows.get(key) ?? { row, parts: [] };
      const before = found.parts.reduce((sum, { cells }) => sum + cells.length, 0);
      const [share, more] = [shareOf(n, told.length, at), isLast ? (extras[stop.batchId] ?? 0) : 0];
      const cells = Array.from({ length: share + more }, (_, i) => ({ key: `${stop.batchId}/${nth++}`, batchId: stop.batchId, at: before + i + 1, isExtra: i >= share }));
      rows.set(key, { row, parts: [...found.parts, { stop, cells, isLast }] });
    });
  }
  return [...rows].map(([key, found]) => ({ key, ...found })).sort((one, other) => (one.row ?? Infinity) - (other.row ?? Infinity) || 0);
}

/** "3-5" is rows 3, 4 and 5; a batch without rows stands in one of its own. */
function rowsIn(rows: string | null): readonly (number | undefined)[] {
  const [one, other = one] = (rows ?? '').split('-').map(Number);
  if (!one || !other) return [undefined];
  const from = Math.min(one, other);
  return Array.from({ length: Math.abs(other - one) + 1 }, (_, at) => from + at);
}

/** Plants of one of so many rows, as even as can be, the first rows the fuller ones. */
const shareOf = (n: number, rows: number, at: number): number => Math.floor(n / rows) + (at < n % rows ? 1 : 0);

/** A tap marks a plant, another tap takes the mark away. */
export function tapped(marks: Marks, key: string): Marks {
  const { [key]: was, ...others } = marks;
  return was === undefined ? { ...others, [key]: 'open' } : others;
}

/** What the eye sees, for every plant marked since it was told last. */
export const withCause = (marks: Marks, mark: Mark): Marks => Object.fromEntries(Object.entries(marks).map(([key, was]) => [key, was === 'open' ? mark : was]));

const marksOf = (marks: Marks, batchId: string): Mark[] => Object.entries(marks).flatMap(([key, mark]) => (key.startsWith(`${batchId}/`) ? [mark] : []));

/** Dead by cause. One that is gone left no body: a count misses it, and nobody says it died. */
function deadOf(marks: readonly Mark[]): Dead {
  const dead: Record<string, number> = {};
  for (const mark of marks) {
    const cause = mark === 'open' ? 'unclear' : mark;
    if (cause !== 'gone' && !isRoot(cause)) dead[cause] = (dead[cause] ?? 0) + 1;
  }
  return dead;
}

/** What cells say of one batch. @param isAll somebody looked at every plant: else nothing is known of those without a mark */
export function told({ stop, n }: Celled, marks: Marks, extras: Extras, { isAll, look }: Pick<Telling, 'isAll' | 'look'>): Pick<Answer, 'numbers' | 'dead'> {
  const own = marksOf(marks, stop.batchId);
  const roots = own.filter(isRoot);
  const alive = n + (extras[stop.batchId] ?? 0) - own.length + roots.length;
  return { numbers: isAll ? { alive, ...(asksRoots(stop, look) ? rootsTold(roots, alive, look) : {}) } : {}, dead: deadOf(own) };
}

/** What is marked in a tray, in figures. */
export function countsOf(celled: readonly Celled[], marks: Marks, extras: Extras): { readonly open: number; readonly dead: number; readonly alive: number; readonly isOnlyByCount: boolean } {
  const all = celled.flatMap(({ stop }) => marksOf(marks, stop.batchId)).filter((mark) => !isRoot(mark));
  const [gone, added] = [all.filter((mark) => mark === 'gone').length, Object.values(extras).reduce((sum, n) => sum + n, 0)];
  return {
    open: all.filter((mark) => mark === 'open').length,
    dead: all.length - gone,
    alive: celled.reduce((sum, { n }) => sum + n, 0) + added - all.length,
    // A plant too few or too many is seen by counting alone.
    isOnlyByCount: gone + added > 0,
  };
}

interface Telling {
  readonly look: Look;
  /** Somebody looked at every plant of the tray, and says so. */
  readonly isAll: boolean;
  readonly minuteOf: (before: Answer | undefined) => number | undefined;
  readonly before: Readonly<Record<string, Answer>>;
}

/** What a tapped tray says, batch by batch: the same answers as a walk from batch to batch would give. Without a look at all, only batches with dead are told. */
export function answersOf(celled: readonly Celled[], marks: Marks, extras: Extras, { look, isAll, minuteOf, before }: Telling): readonly Answer[] {
  return celled.flatMap((one) => {
    const { numbers, dead } = told(one, marks, extras, { isAll, look });
    if (!isAll && deadIn(dead) === 0) return [];
    const earlier = before[one.stop.batchId];
    return [answerTo(one.stop, { said: 'seen', look, numbers, dead, minute: minuteOf(earlier) }, earlier)];
  });
}
