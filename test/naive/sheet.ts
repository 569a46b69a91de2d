import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { BatchIdentity, Entry, Saying, Stage } from '@sprigline/domain';

const FILE = fileURLToPath(new URL('../fixtures/ok/log-sheet-two-seasons.csv', import.meta.url));
const IMPORTED_ON = '2026-12-31';
const OPENS = { stuck: 'cutting', lifted: 'liner', potted: 'potted', planted: 'planted' } as const;

export interface SheetBatch extends BatchIdentity {
  readonly donor: string;
  readonly stand: string;
}

type Row = Readonly<Record<string, string>> & { readonly id: string };

/** The group's log sheet as batches (label = id) and entries. Two equal rows are two entries. */
export function readSheet(): { batches: SheetBatch[]; entries: Entry[] } {
  const [names = [], ...lines] = readFileSync(FILE, 'utf8').trim().split(/\r?\n/).map(cells);
  const rows = lines.map((line, index): Row => ({
    ...Object.fromEntries(names.map((name, column) => [name, line[column]?.trim() ?? ''])),
    id: `row-${String(index + 2).padStart(4, '0')}`,
  }));
  const batches = openedBy(rows);
  const stages = new Map(batches.map(({ id, stage }) => [id, stage]));
  return { batches, entries: rows.map((row) => entryOf(row, stages)) };
}

/** Of one line of the file; commas inside quotes are text. The sheet has no quote inside a quote. */
const cells = (line: string): string[] =>
  [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');

/** A label opens where it is stuck or gone on to; what comes later than its first row is a join. */
function openedBy(rows: readonly Row[]): SheetBatch[] {
  const batches = new Map<string, SheetBatch>();
  for (const row of [...rows].sort((a, b) => (at(a, 'date') < at(b, 'date') ? -1 : 1))) {
    const stage: Stage | undefined = OPENS[at(row, 'what') as keyof typeof OPENS];
    const id = at(row, 'what') === 'stuck' ? at(row, 'label') : at(row, 'to_label');
    if (stage === undefined || batches.has(id)) continue;
    const parent = batches.get(at(row, 'label'));
    batches.set(id, {
      id,
      stage,
      stickingId: parent?.stickingId ?? id,
      openingEntryId: row.id,
      openingPlaceId: at(row, 'place'),
      donor: parent?.donor ?? at(row, 'donor'),
      stand: parent?.stand ?? inTitleCase(at(row, 'stand')),
    });
  }
  return [...batches.values()];
}

const inTitleCase = (name: string): string => name.toLowerCase().replace(/\b[a-z]/g, (letter) => letter.toUpperCase());

function entryOf(row: Row, stages: ReadonlyMap<string, Stage>): Entry {
  return { id: row.id, observedOn: at(row, 'date'), receivedOn: IMPORTED_ON, door: 'import', saying: saidBy(row, stages) };
}

function saidBy(row: Row, stages: ReadonlyMap<string, Stage>): Saying {
  const batchId = at(row, 'label');
  const n = Number(at(row, 'count'));
  const placeId = at(row, 'place');
  const kind = at(row, 'what');
  switch (kind) {
    case 'stuck':
      return { kind, batchId, stickingId: batchId, n, placeId };
    case 'counted': {
      const rooted = at(row, 'rooted') === '' ? undefined : Number(at(row, 'rooted'));
      const look = rooted !== undefined && stages.get(batchId) === 'cutting' ? 'tug' : 'look';
      return { kind, batchId, alive: n, look, rooted, dead: [] };
    }
    case 'died':
      return { kind, batchId, n, cause: at(row, 'cause'), certainty: 'unknown' };
    case 'thrown out':
      if (at(row, 'cause') === 'no roots') return { kind: 'called', batchId, n };
      return { kind: 'thrownOut', batchId, n, reason: at(row, 'cause') };
    case 'given':
      return { kind: 'givenOut', batchId, n };
    case 'lifted':
    case 'potted':
    case 'planted':
      return { kind, batchId, n, toBatchId: at(row, 'to_label'), placeId };
    default:
      throw new Error(`${row.id}: nobody says "${kind}"`);
  }
}

function at(row: Row, column: string): string {
  const cell = row[column];
  if (cell === undefined) throw new Error(`the sheet has no column ${column}`);
  return cell;
}
