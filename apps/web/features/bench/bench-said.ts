import { derivedId } from '../../lib/derived-id.ts';
import type { UncheckedEntry } from '../../lib/entry-said.ts';
import { day, isTicked, number, text } from '../../lib/form-values.ts';
import { lineField } from '../../lib/line-field.ts';
import type { LineEntry } from '../../lib/lines.ts';
import { taggedOf } from './tagged.ts';

/** What all entries of a form have in common. Its minute was made with the page, so that sending again sends the same. */
function around(form: FormData): Omit<UncheckedEntry, 'id' | 'saying'> {
  const observedOn = day(form, 'observedOn');
  return { observedOn, minute: observedOn === text(form, 'madeOn') ? number(form, 'minute') : undefined, writtenAt: text(form, 'writtenAt'), note: text(form, 'note') };
}

interface Line {
  readonly at: number;
  readonly batchId: string;
  readonly entryId: string;
  readonly toBatchId: string;
  told(field: string): string | undefined;
  num(field: string): ReturnType<typeof number>;
}

const linesOf = (form: FormData, lines: number): Line[] =>
  Array.from({ length: lines }, (_, at) => {
    const told = (field: string) => text(form, lineField(at, field));
    return { at, batchId: told('batchId') ?? '', entryId: told('entryId') ?? '', toBatchId: told('toBatchId') ?? '', told, num: (field) => number(form, lineField(at, field)) };
  });

/** Lines without a number say nothing. */
const withNumber = (form: FormData, lines: number): Line[] => linesOf(form, lines).filter(({ num }) => num('n') !== undefined);

/** One entry for each batch that was potted up. */
export function potSaid(form: FormData, lines: number): LineEntry[] {
  return withNumber(form, lines).map(({ at, batchId, entryId, toBatchId, told, num }) => ({
    at,
    entry: {
      ...around(form), id: entryId,
      saying: {
        kind: 'potted', batchId, n: num('n'), toBatchId, placeId: told('placeId') ?? text(form, 'placeId'), label: told('label'), container: told('container') ?? text(form, 'container'),
        medium: text(form, 'medium'), ...(isTicked(form, lineField(at, 'leavesNone')) ? { leavesNone: true } : {}),
      },
    },
  }));
}

/** One entry for each batch that was marked as standing elsewhere. */
export function moveSaid(form: FormData, lines: number): LineEntry[] {
  return linesOf(form, lines)
    .filter(({ at }) => isTicked(form, lineField(at, 'chosen')))
    .map(({ at, batchId, entryId }) => ({ at, entry: { ...around(form), id: entryId, saying: { kind: 'moved', batchId, placeId: text(form, 'placeId') } } }));
}

/** One entry for each batch of a plot that was looked at. */
export function checkSaid(form: FormData, lines: number): LineEntry[] {
  return linesOf(form, lines)
    .filter(({ num }) => ['alive', 'dead', 'notFound', 'notLooked'].some((field) => num(field) !== undefined))
    .map(({ at, batchId, entryId, told, num }) => ({
      at,
      entry: {
        ...around(form), id: entryId,
        saying: {
          kind: 'checked', batchId, alive: num('alive') ?? 0, dead: num('dead') === undefined || num('dead') === 0 ? [] : [{ n: num('dead'), cause: told('cause') }],
          notFound: num('notFound') ?? 0, notLooked: num('notLooked') ?? 0,
        },
      },
    }));
}

/** The one entry of a mixture. */
export function mixSaid(form: FormData, lines: number): UncheckedEntry {
  const parts = withNumber(form, lines).map(({ batchId, num }) => ({ batchId, n: num('n') }));
  return {
    ...around(form), id: text(form, 'actId') ?? '',
    saying: { kind: 'mixed', toBatchId: text(form, 'toBatchId'), placeId: text(form, 'placeId'), parts, label: text(form, 'label'), container: text(form, 'container'), medium: text(form, 'medium') },
  };
}

/**
 * One entry for each tagged plant, all of one act.
 *
 * @throws DomainError as labelRun, positionRun and tagPlants do
 */
export function plantSaid(form: FormData, lines: number): UncheckedEntry[] {
  const act = text(form, 'actId') ?? '';
  return taggedOf(form, lines).map(({ batchId, label, position }, at) => ({
    ...around(form), id: derivedId('tagged', act, batchId, label), line: at + 1,
    saying: { kind: 'planted', batchId, n: 1, toBatchId: derivedId('tagged plant', act, label), placeId: text(form, 'placeId'), label, ...(position === undefined ? {} : { positions: [position] }) },
  }));
}
