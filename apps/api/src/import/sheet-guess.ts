import type { SheetGuess } from '@sprigline/contract';
import { guessActs, guessColumns, nearSpellings, plainSpelling, possibleDayOrders, SPELT_FIELDS, type SheetField } from '@sprigline/domain';
import type { SheetEncoding } from './sheet-bytes.ts';
import type { SheetTable } from './sheet-table.ts';

const SAMPLE = 5;
/** More different words than this in the column *what*, and it is not that column. */
const WORDS_SHOWN = 60;
/** Spellings are compared pair by pair. */
const SPELLINGS_COMPARED = 2_000;

/** What a sheet seems to hold, for a person to confirm. */
export function guessOf(table: SheetTable, encoding: SheetEncoding): SheetGuess {
  const columns = guessColumns(table.headings);
  const words = countOf(table, columns.what);
  const acts = guessActs(words.keys());
  return {
    encoding,
    delimiter: table.delimiter,
    headings: [...table.headings],
    sample: table.rows.slice(0, SAMPLE).map(({ cells }) => [...cells]),
    rows: table.rows.length,
    columns,
    words: mostFirst(words).slice(0, WORDS_SHOWN).map(([word, times]) => {
      const act = acts[plainSpelling(word)];
      return act ? { word, times, act } : { word, times };
    }),
    dayOrders: possibleDayOrders(cellsOf(table, columns.date)),
    spellings: Object.fromEntries(SPELT_FIELDS.map((field) => [field, groupsOf(table, columns[field])] as const).filter(([, groups]) => groups.length > 0)),
  };
}

const groupsOf = (table: SheetTable, column: number | undefined) =>
  nearSpellings(new Map(mostFirst(rawCountOf(table, column)).slice(0, SPELLINGS_COMPARED))).map(({ keep, sameApartFromCase, spellings }) => ({
    keep, sameApartFromCase, spellings: spellings.map((spelling) => ({ ...spelling })),
  }));

const cellsOf = (table: SheetTable, column: number | undefined): string[] =>
  column === undefined ? [] : table.rows.map(({ cells }) => cells[column] ?? '');

/** How often each word stands there, by its plain spelling. */
function countOf(table: SheetTable, column: number | undefined): Map<string, number> {
  return countUp(cellsOf(table, column).map(plainSpelling));
}

const rawCountOf = (table: SheetTable, column: number | undefined): Map<string, number> => countUp(cellsOf(table, column));

function countUp(words: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const word of words) if (word.trim() !== '') counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

const mostFirst = (counts: ReadonlyMap<string, number>): [string, number][] =>
  [...counts].sort(([a, times], [b, more]) => more - times || (a < b ? -1 : 1));

/** Columns without which a sheet is no log. */
export const NEEDED_FIELDS: readonly SheetField[] = ['date', 'what', 'label', 'count'];
