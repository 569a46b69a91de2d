import { type BatchIdentity, type Saying, STAGES, type Stage } from '@sprigline/domain';
import type { Opening } from './history-draw.ts';

export const KIND_TO = { liner: 'lifted', potted: 'potted', planted: 'planted' } as const;
export const IDS = ['A', 'B', 'C', 'D'] as const;

/** The stage `steps` further on than that one, or the last. */
export const later = (stage: Stage, steps: number): Exclude<Stage, 'cutting'> => {
  const found = STAGES[Math.min(STAGES.indexOf(stage) + steps, STAGES.length - 1)];
  return found === undefined || found === 'cutting' ? 'planted' : found;
};

export interface Opened {
  readonly batch: BatchIdentity;
  readonly saying: Saying;
}

/** Opens one batch, out of one that is there already where it can be. */
export function open(id: string, entryId: string, draw: Opening, there: readonly BatchIdentity[]): Opened {
  const source = there[draw.from % Math.max(1, there.length)];
  const { stage, saying } = source === undefined || draw.how < 2 ? fromOutside(id, draw) : fromBatch(id, draw, source);
  const batch = { id, stage, stickingId: `sticking ${id}`, openingEntryId: entryId, openingPlaceId: `place ${id}` };
  return { batch, saying };
}

interface Start { readonly stage: Stage; readonly saying: Saying }

function fromOutside(batchId: string, { how, stage: number, n, rooted: told, source }: Opening): Start {
  const rest = { batchId, stickingId: `sticking ${batchId}`, n, placeId: `place ${batchId}` };
  if (how === 0) return { stage: 'cutting', saying: { kind: 'stuck', ...rest } };
  const stage = STAGES[number] ?? 'cutting';
  const rooted = stage === 'cutting' ? told : undefined;
  return { stage, saying: { kind: 'received', source: source as 'opening', stage, rooted, ...rest } };
}

function fromBatch(toBatchId: string, draw: Opening, source: BatchIdentity): Start {
  const { n } = draw;
  const { id: batchId, stage } = source;
  const placeId = `place ${toBatchId}`;
  const stickingId = `sticking ${toBatchId}`;
  const rooted = stage === 'cutting' && draw.rooted !== undefined ? Math.min(n, draw.rooted) : undefined;
  switch (draw.how) {
    case 2:
    case 3: {
      if (stage === 'planted') break;
      const next = later(stage, draw.how - 1);
      return { stage: next, saying: { kind: KIND_TO[next], batchId, n, toBatchId, placeId } };
    }
    case 4:
      return { stage, saying: { kind: 'givenOut', batchId, n, toBatchId, rooted } };
    case 5:
      if (stage !== 'cutting') break;
      return { stage, saying: { kind: 'restuck', batchId, n, toBatchId, stickingId, placeId } };
    case 6:
      return { stage, saying: { kind: 'mixed', toBatchId, parts: [{ batchId, n }, { batchId: 'elsewhere', n: 2 }], placeId } };
    case 7:
      return { stage, saying: { kind: 'identified', batchId, stickingId, toBatchId, n, placeId } };
  }
  return { stage, saying: { kind: 'moved', batchId, placeId, toBatchId, n, rooted } };
}
