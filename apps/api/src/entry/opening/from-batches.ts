import type { Saying as Said } from '@sprigline/contract';
import { DomainError, refuseStageGoneBack } from '@sprigline/domain';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch } from '../pages/page-rows.ts';
import type { Opening, OpeningEntry } from './opened.ts';
import { openOrJoin, type ToldOfBatch } from './target-batch.ts';

const STAGE_AFTER = { lifted: 'liner', potted: 'potted', planted: 'planted' } as const;

export function goesOn(said: Extract<Said, { kind: 'lifted' | 'potted' | 'planted' }>, entry: OpeningEntry): Opening {
  const parent = batchIn(entry.pages, said.batchId);
  const stage = STAGE_AFTER[said.kind];
  refuseStageGoneBack(parent.stage, stage);
  return openOrJoin({ ...lineOf(parent), stage, batchId: said.toBatchId, parent, placeId: said.placeId }, said, entry);
}

/** Some of a batch go elsewhere at the same stage: a split, a join, or a gift within the programme. */
export function splits(
  said: ToldOfBatch & { readonly batchId: string; readonly toBatchId: string; readonly placeId: string },
  entry: OpeningEntry,
): Opening {
  const parent = batchIn(entry.pages, said.batchId);
  return openOrJoin({ ...lineOf(parent), stage: parent.stage, batchId: said.toBatchId, parent, placeId: said.placeId }, said, entry);
}

/** @throws DomainError `batch/there-already` since a mixture is made once, of what it was made of */
export function mixed(said: Extract<Said, { kind: 'mixed' }>, entry: OpeningEntry): Opening {
  const parts = said.parts.map(({ batchId }) => batchIn(entry.pages, batchId));
  const [stage, ...others] = new Set(parts.map((part) => part.stage));
  if (stage === undefined || others.length > 0) {
    throw new DomainError('batch/other-stage', 'plants of different stages cannot become one batch', { stages: [stage, ...others].join(', ') });
  }
  const there = entry.pages.batches.get(said.toBatchId);
  if (there) {
    if (there.openingEntryId === entry.id) return {};
    throw new DomainError('batch/there-already', 'mixing makes a batch of its own: give it an id of its own');
  }
  const standPartners = [...new Set(parts.flatMap((part) => part.standPartners))];
  const target = { batchId: said.toBatchId, stage, stickingId: undefined, placeId: said.placeId, standPartners };
  return { ...openOrJoin(target, said, entry), parts: said.parts };
}

export function identified(said: Extract<Said, { kind: 'identified' }>, entry: OpeningEntry): Opening {
  const parent = batchIn(entry.pages, said.batchId);
  const sticking = entry.pages.stickings.get(said.stickingId);
  const { stage } = parent;
  const line = { stickingId: said.stickingId, standPartners: sticking?.standPartners ?? [] };
  return openOrJoin({ ...line, stage, batchId: said.toBatchId, parent, placeId: said.placeId }, said, entry);
}

const lineOf = ({ stickingId, standPartners }: KnownBatch) => ({ stickingId, standPartners });

/** Batches that plants come from have been looked for before: see missingFor. */
export function batchIn(pages: OpenPages, batchId: string): KnownBatch {
  const batch = pages.batches.get(batchId);
  if (!batch) throw new DomainError('batch/unknown', 'no batch has this id', { batchId });
  return batch;
}
