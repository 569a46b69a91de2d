import { type Sorting, sortingActs } from '@sprigline/domain';
import { deadSaid, entrySaid, SAYING, type UncheckedEntry } from '../../lib/entry-said.ts';
import { number, text } from '../../lib/form-values.ts';
import { DEAD_LINES } from './dead-lines.tsx';

/** Heaps that a tray is sorted into, each with a number of its own in the form. */
export const HEAPS = ['lifted', 'potted', 'back', 'thrownOut'] as const;

/** Kinds of entries that a sorting may become; the form brings an id for each. */
export const SORT_KINDS = ['found', 'counted', 'thrownOut', 'lifted', 'potted'] as const;

const told = (form: FormData, name: string) => text(form, `${SAYING}${name}`);

/** The numbers of a sorting, as far as they are numbers; what was left empty is none. */
export function sortingOf(form: FormData): Sorting {
  const count = (name: string): number => asCount(number(form, `${SAYING}${name}`)) ?? 0;
  const dead = deadSaid(form, DEAD_LINES) as { n: unknown }[];
  return {
    inBooks: Number(text(form, 'inBooks') ?? 0),
    lifted: count('lifted'), potted: count('potted'), back: count('back'), thrownOut: count('thrownOut'),
    backRooted: asCount(number(form, `${SAYING}backRooted`)), backCallused: asCount(number(form, `${SAYING}backCallused`)),
    dead: dead.reduce((sum, { n }) => sum + (asCount(n) ?? 0), 0),
  };
}

const asCount = (value: unknown): number | undefined => (typeof value === 'number' && Number.isSafeInteger(value) && value >= 0 ? value : undefined);

/** Fields of the form that hold no count although something was typed. */
export function notCounts(form: FormData): string[] {
  const dead = Array.from({ length: DEAD_LINES }, (_, at) => `dead/${at}/n`);
  return [...HEAPS, 'backRooted', 'backCallused', ...dead].filter((name) => {
    const value = number(form, `${SAYING}${name}`);
    return value !== undefined && asCount(value) === undefined;
  });
}

/** The entries of a sorted tray, one line after the other. */
export function sortSaid(batchId: string, isCutting: boolean, form: FormData): UncheckedEntry[] {
  return sortingActs(sortingOf(form)).map((act, at) => {
    const entry = entrySaid(form, sayingOf(act));
    return { ...entry, id: text(form, `ids/${act.kind}`) ?? '', minute: entry['minute'] ?? minuteOf(text(form, 'time')), line: at + 1, ...(act.kind === 'counted' ? {} : { note: undefined }) };
  });

  function sayingOf(act: ReturnType<typeof sortingActs>[number]): object {
    switch (act.kind) {
      case 'found':
        return { ...act, batchId, reason: told(form, 'foundReason') };
      case 'thrownOut':
        return { ...act, batchId, reason: told(form, 'thrownReason') };
      case 'counted':
        return { ...act, batchId, look: isCutting ? 'lifted' : 'look', rooted: isCutting ? act.rooted : undefined, dead: deadSaid(form, DEAD_LINES) };
      default: {
        const { leavesNone, ...went } = act;
        const where = (name: string) => told(form, `${act.kind}/${name}`);
        return {
          ...went, batchId, toBatchId: text(form, `to/${act.kind}`), placeId: where('placeId'), label: where('label'), container: where('container'), medium: where('medium'),
          ...(leavesNone ? { leavesNone } : {}),
        };
      }
    }
  }
}

/** Minute of the day of a time such as 14:30. */
export function minuteOf(time: string | undefined): number | undefined {
  const [, hour, minute] = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(time ?? '') ?? [];
  return hour === undefined ? undefined : Number(hour) * 60 + Number(minute);
}

/** The field of the form that an entry's field was typed into. */
export function sortField(kind: string, field: string): string {
  const [first = ''] = field.split('/');
  switch (kind) {
    case 'found':
      return first === 'reason' ? 'foundReason' : 'back';
    case 'thrownOut':
      return first === 'reason' ? 'thrownReason' : 'thrownOut';
    case 'counted':
      return first === 'dead' ? field : first === 'rooted' || first === 'callused' ? `back${first[0]?.toUpperCase()}${first.slice(1)}` : 'back';
    default:
      return first === 'n' ? kind : `${kind}/${first}`;
  }
}
