import type { BatchIdentity, Entry, Look, Saying } from '@sprigline/domain';
import type { Act } from './history-draw.ts';
import { KIND_TO, later } from './history-openings.ts';

/** What somebody says of a batch that is there, knowing what was said; joins another one where its stage allows it. */
export function say(draw: Act, batches: readonly BatchIdentity[], said: readonly Entry[]): Saying {
  const batch = pick(batches, draw.batch);
  const { id: batchId, stage } = batch;
  const { n } = draw;
  if (draw.what < 7) return look(draw, batch);
  if (draw.what < 12) return goOn(draw, batch, batches);
  const rooted = stage === 'cutting' && draw.rooted !== undefined ? Math.min(draw.rooted, n) : undefined;
  const placeId = 'other place';
  const toBatchId = joinable(draw, batch, batches, stage);
  switch (draw.what) {
    case 12:
      return { kind: 'thrownOut', batchId, n, reason: 'weak' };
    case 13:
      return { kind: 'called', batchId, n };
    case 14:
      return draw.leavesNone ? { kind: 'moved', batchId, placeId } : { kind: 'moved', batchId, placeId, toBatchId, n, rooted };
    case 15:
      return { kind: 'givenOut', batchId, n, rooted, ...(draw.leavesNone ? { toBatchId } : {}) };
    case 16:
      return { kind: 'found', batchId, n, reason: 'under the bench' };
    case 17:
      return draw.leavesNone ? { kind: 'held', batchId } : { kind: 'released', batchId, holdId: draw.step === 0 ? undefined : someHold(draw, said) };
    case 18:
      return { kind: 'mixed', toBatchId, parts: [{ batchId, n }, { batchId: 'elsewhere', n: 1 }], placeId };
    case 19:
      if (stage !== 'cutting') return { kind: 'noted', batchId, lookedOver: draw.leavesNone ? true : undefined };
      return { kind: 'restuck', batchId, n, toBatchId, stickingId: 'second try', placeId };
    default:
      return { kind: 'identified', batchId, stickingId: 'known', toBatchId, n, placeId };
  }
}

/** What may hold a batch: a hold or a return, perhaps of another batch, for people pick the wrong line. */
function someHold(draw: Act, said: readonly Entry[]): string {
  const holds = said.filter(({ saying: { kind } }) => kind === 'held' || kind === 'received');
  return holds[draw.other % Math.max(1, holds.length)]?.id ?? 'no such hold';
}

function look(draw: Act, { id: batchId, stage }: BatchIdentity): Saying {
  const { alive, dead, notFound, notLooked, n } = draw;
  if (draw.what < 2) return { kind: 'died', batchId, n, cause: 'mould', certainty: 'likely' };
  if (draw.what < 5 && stage === 'planted') return { kind: 'checked', batchId, alive, dead, notFound, notLooked };
  const rooted = stage === 'cutting' && draw.rooted !== undefined ? Math.min(draw.rooted, alive) : undefined;
  const sampleOf = draw.sampleOf !== undefined ? Math.max(draw.sampleOf, alive) : undefined;
  return { kind: 'counted', batchId, alive, sampleOf, look: draw.look as Look, rooted, dead };
}

function goOn(draw: Act, batch: BatchIdentity, batches: readonly BatchIdentity[]): Saying {
  const { id: batchId, stage } = batch;
  if (stage === 'planted') return { kind: 'noted', batchId };
  // Lifting from the tray is what most rules hang on, so it is drawn more often than skipping.
  const next = later(stage, draw.what < 10 ? 1 : 1 + draw.step);
  const toBatchId = joinable(draw, batch, batches, next);
  return { kind: KIND_TO[next], batchId, n: draw.n, toBatchId, placeId: 'bench', leavesNone: draw.leavesNone && draw.step === 0 };
}

/** Another batch of that stage, or one that no history follows. */
function joinable(draw: Act, batch: BatchIdentity, batches: readonly BatchIdentity[], stage: string): string {
  const other = pick(batches, draw.other);
  return other.id !== batch.id && other.stage === stage ? other.id : 'nowhere';
}

export function pick<T>(things: readonly T[], number: number): T {
  const thing = things[number % things.length];
  if (thing === undefined) throw new Error('nothing to pick from');
  return thing;
}
