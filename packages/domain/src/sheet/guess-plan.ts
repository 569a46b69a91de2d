import { plainSpelling } from './plain-spelling.ts';
import { SHEET_FIELDS, type SheetAct, type SheetField } from './sheet.ts';

/** Headings that people write over a column, in plain spelling. The first that fits wins. */
const HEADINGS: Readonly<Record<SheetField, readonly string[]>> = {
  date: ['date', 'day', 'when', 'seen on', 'done on'],
  what: ['what', 'act', 'action', 'event', 'done', 'task'],
  label: ['label', 'batch', 'tray label', 'tag', 'from label', 'from'],
  donor: ['donor', 'donor tree', 'tree', 'mother tree', 'parent tree'],
  stand: ['stand', 'source', 'source stand', 'population', 'wood'],
  species: ['species', 'taxon', 'scientific name', 'name of the species'],
  count: ['count', 'n', 'number', 'how many', 'alive', 'plants', 'quantity'],
  rooted: ['rooted', 'with roots', 'roots'],
  toLabel: ['to label', 'new label', 'into', 'to', 'to batch'],
  place: ['place', 'where', 'location', 'bench', 'to place', 'site'],
  recipe: ['recipe', 'treatment', 'hormone', 'how'],
  cause: ['cause', 'reason', 'why', 'died of', 'cause of death'],
  notes: ['notes', 'note', 'remarks', 'comment', 'comments'],
};

/** Words that people write for what was done, in plain spelling. */
const ACT_WORDS: Readonly<Record<SheetAct, readonly string[]>> = {
  stuck: ['stuck', 'stick', 'sticking', 'cuttings taken', 'inserted'],
  counted: ['counted', 'count', 'check', 'checked', 'alive'],
  died: ['died', 'dead', 'death', 'lost'],
  thrownOut: ['thrown out', 'threw out', 'thrown away', 'binned', 'discarded', 'rejected', 'composted'],
  called: ['called', 'tray called', 'no roots'],
  lifted: ['lifted', 'lift', 'pricked out', 'to liner'],
  potted: ['potted', 'potted up', 'potting up', 'pot up'],
  planted: ['planted', 'planted out', 'planting', 'outplanted'],
  moved: ['moved', 'move'],
  givenOut: ['given', 'given out', 'given away', 'gave', 'sent out'],
  found: ['found', 'turned up'],
};

/** Which column holds which field, by its heading. Fields without a fitting heading are left out. */
export function guessColumns(headings: readonly string[]): Partial<Record<SheetField, number>> {
  const plain = headings.map((heading) => plainSpelling(heading.replaceAll('_', ' ')));
  const guessed: Partial<Record<SheetField, number>> = {};
  for (const field of SHEET_FIELDS) {
    const column = HEADINGS[field].map((heading) => plain.indexOf(heading)).find((index) => index >= 0);
    if (column !== undefined && !Object.values(guessed).includes(column)) guessed[field] = column;
  }
  return guessed;
}

/** What each word means, by its plain spelling. Words that fit nothing are left out: a person must say. */
export function guessActs(words: Iterable<string>): Record<string, SheetAct> {
  const meanings = new Map(Object.entries(ACT_WORDS).flatMap(([act, spellings]) => spellings.map((word) => [word, act as SheetAct])));
  const guessed: Record<string, SheetAct> = {};
  for (const word of words) {
    const act = meanings.get(plainSpelling(word));
    if (act) guessed[plainSpelling(word)] = act;
  }
  return guessed;
}
