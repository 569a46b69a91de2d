import type { WorkListLine } from '@sprigline/contract';
import { type AskedOnLine, askedOnList, type WorkListKind } from '@sprigline/domain';
import { sayDay } from '../../lib/calendar.ts';

/** What there is to write into on paper. Where plants go stands once above; a dead one's cause in the note. */
export function boxesOf(kind: WorkListKind): readonly (Exclude<AskedOnLine, 'placeId' | 'container'> | 'note')[] {
  return [...askedOnList(kind).filter((asked) => asked !== 'placeId' && asked !== 'container'), 'note'];
}

export type Box = ReturnType<typeof boxesOf>[number];

/** Boxes for words, which need a line rather than a square. */
export const IS_FOR_WORDS: ReadonlySet<Box> = new Set<Box>(['label', 'positions', 'note']);
export const IS_A_TICK: ReadonlySet<Box> = new Set<Box>(['leavesNone', 'moved']);

/** How a sheet says things, out of the message file. */
export interface SheetWords {
  readonly plants: (n: number) => string;
  readonly rooted: (n: number) => string;
  readonly rootedOn: (n: number, day: string) => string;
  readonly rows: (rows: string) => string;
  readonly stuck: (day: string) => string;
  readonly held: string;
  readonly mixed: string;
}

/** One line of a sheet in words, the same on screen and on paper. */
export function lineWords({ batch, path }: WorkListLine, words: SheetWords) {
  const { rootedNow, rootedOn, rows, stuckOn, container, held } = batch;
  const rooted = rootedNow === null || batch.stage === 'potted' || batch.stage === 'planted' ? undefined : rootedOn === null ? words.rooted(rootedNow) : words.rootedOn(rootedNow, sayDay(rootedOn));
  return {
    label: batch.label ?? `…${batch.id.slice(-6)}`,
    place: path.join(' › '),
    rows: rows === null ? undefined : words.rows(rows),
    from: [batch.isMixed ? words.mixed : batch.donorTree?.label, batch.stand?.name].filter(Boolean).join(', '),
    species: batch.taxon?.name,
    there: words.plants(batch.balance),
    more: [rooted, batch.stage === 'cutting' && stuckOn !== null ? words.stuck(sayDay(stuckOn)) : undefined, container ?? undefined].filter((said) => said !== undefined),
    held: held ? words.held : undefined,
  };
}
