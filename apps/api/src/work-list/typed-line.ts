import { NewEntry, type TypedLine, type TypedSheet, type WorkListKind } from '@sprigline/contract';
import { type AskedOnLine, askedOnList, DomainError } from '@sprigline/domain';
import { contentId } from '../entry/entry.module.ts';

/** One printed line: which batch it is, on which sheet of which programme. */
export interface PrintedLine {
  readonly programmeId: string;
  readonly listId: string;
  readonly kind: WorkListKind;
  readonly number: number;
  readonly batchId: string;
}

type Saying = Record<string, unknown> & { readonly kind: string };

/**
 * The entries that a typed line becomes.
 *
 * Their ids are made from sheet, line and part: whoever types the line, and however often,
 * names the same entries, so that no line goes into the books twice.
 *
 * @throws DomainError `work-list/not-asked`, `work-list/nothing-told`, `work-list/alive-missing`,
 *   `work-list/rooted-above-alive`, `work-list/place-missing`
 */
export function entriesOfLine(printed: PrintedLine, line: TypedLine, sheet: TypedSheet): NewEntry[] {
  refuseUnfit(printed.kind, line);
  const { observedOn, seenBy, workdayId, writtenAt } = sheet;
  const parts = partsOf(printed, line, sheet);
  return parts.map(([part, saying], at) => NewEntry.parse({
    id: idOf(printed, part), observedOn, seenBy, workdayId, writtenAt, line: printed.number, saying,
    // What was scribbled beside the boxes belongs to the line: it stands once, with its first entry.
    ...(at === 0 && saying.kind !== 'noted' ? { note: line.note } : {}),
  }));
}

const idOf = ({ programmeId, listId, number }: PrintedLine, part: string): string => contentId(programmeId, 'work-list', listId, number, part);

/** What the line says, each with a name of its own within the line. */
function partsOf(printed: PrintedLine, line: TypedLine, { look }: TypedSheet): [string, Saying][] {
  const { batchId, kind } = printed;
  const { alive, rooted, callused, dead, notFound = 0, notLooked = 0, note } = line;
  const isSeen = alive !== undefined;
  const onward = { batchId, toBatchId: idOf(printed, 'to'), placeId: line.placeId, label: line.label, container: line.container, positions: line.positions, leavesNone: line.leavesNone };
  const parts: [string, Saying | false][] = [
    ['seen', isSeen && (kind === 'siteCheck' ? { kind: 'checked', batchId, alive, dead, notFound, notLooked } : { kind: 'counted', batchId, alive, rooted, callused, dead, look: kind === 'rootCheck' ? look : 'look' })],
    // Dead without a count are entries of their own.
    ...(isSeen ? [] : dead.map((lost, at): [string, Saying] => [`died ${at + 1}`, { kind: 'died', batchId, ...lost }])),
    ['lifted', line.lifted !== undefined && { kind: 'lifted', n: line.lifted, ...onward }],
    ['potted', line.potted !== undefined && { kind: 'potted', n: line.potted, ...onward }],
    ['planted', line.planted !== undefined && { kind: 'planted', n: line.planted, ...onward }],
    ['moved', line.moved === true && { kind: 'moved', batchId, placeId: line.placeId }],
    ['called', line.called !== undefined && { kind: 'called', batchId, n: line.called }],
  ];
  const told = parts.filter((part): part is [string, Saying] => part[1] !== false);
  return told.length === 0 && note !== undefined ? [['noted', { kind: 'noted', batchId, text: note }]] : told;
}

function refuseUnfit(kind: WorkListKind, line: TypedLine): void {
  const { number, note, ...told } = line;
  const asked: readonly string[] = askedOnList(kind);
  const others = Object.entries(told).filter(([name, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0) && !asked.includes(name));
  if (others[0]) throw new DomainError('work-list/not-asked', `\`${others[0][0]}\` is not asked on this list`, { line: number });

  const { alive, rooted = 0, callused = 0 } = line;
  const goesOn = line.lifted ?? line.potted ?? line.planted ?? line.moved;
  const needsCount: readonly AskedOnLine[] = ['rooted', 'callused', 'notFound', 'notLooked'];
  if (alive === undefined && needsCount.some((name) => told[name as keyof typeof told] !== undefined)) throw new DomainError('work-list/alive-missing', 'a count says how many are alive', { line: number });
  if (alive !== undefined && rooted + callused > alive) throw new DomainError('work-list/rooted-above-alive', 'rooted and callused are among those alive', { line: number });
  if (goesOn !== undefined && line.placeId === undefined) throw new DomainError('work-list/place-missing', 'plants that go on stand somewhere', { line: number });

  const acts = [alive, goesOn, line.called, note, ...line.dead];
  if (acts.every((act) => act === undefined)) throw new DomainError('work-list/nothing-told', 'leave out lines on which nothing is written', { line: number });
}
