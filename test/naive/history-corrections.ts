import type { BatchIdentity, Entry, Saying } from '@sprigline/domain';
import { pick } from './history-acts.ts';
import { type CorrectionDraw, dayOf } from './history-draw.ts';

/** A withdrawal or another version of something said before, now and then of something never heard of. */
export function correct(
  draw: CorrectionDraw,
  said: readonly Entry[],
  earlier: readonly Entry[],
  batches: readonly BatchIdentity[],
): Saying {
  const target = pick(said, draw.target);
  const last = earlier.findLast(({ saying }) => 'entryId' in saying && saying.entryId === target.id);
  const sawVersion = draw.saw === 'nobody' ? 'never heard of' : draw.saw === 'last' ? (last?.id ?? target.id) : target.id;
  if (draw.withdraw) return { kind: 'withdrawn', entryId: target.id, sawVersion };
  const saying = otherwise(target.saying, draw, batches);
  return { kind: 'replaced', entryId: target.id, sawVersion, instead: { observedOn: dayOf(draw.day), minute: draw.minute, saying } };
}

/** Other numbers, and another batch where that needs no new identity. */
function otherwise(saying: Saying, { n, batch }: CorrectionDraw, batches: readonly BatchIdentity[]): Saying {
  switch (saying.kind) {
    case 'died':
    case 'thrownOut':
    case 'called':
    case 'found':
      return { ...saying, n, batchId: pick(batches, batch).id };
    case 'counted':
      return { ...saying, alive: n + 2, sampleOf: undefined, rooted: undefined, batchId: pick(batches, batch).id };
    case 'lifted':
    case 'potted':
    case 'planted':
    case 'stuck':
    case 'restuck':
    case 'identified':
      return { ...saying, n };
    case 'checked':
      return { ...saying, alive: n };
    default:
      return saying;
  }
}
