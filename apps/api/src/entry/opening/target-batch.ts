import { DomainError, keptLabel, type Stage } from '@sprigline/domain';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch } from '../pages/page-rows.ts';
import type { Opening, OpeningEntry } from './opened.ts';

/** How a batch is called and what it stands in, as the entry tells it. */
export interface ToldOfBatch {
  readonly label?: string | undefined;
  readonly rows?: string | undefined;
  readonly container?: string | undefined;
  readonly medium?: string | undefined;
}

/** What the batch that plants go into must be. */
export interface Target {
  readonly batchId: string;
  readonly stage: Stage;
  readonly stickingId: string | undefined;
  readonly parent?: KnownBatch | undefined;
  readonly placeId: string;
  readonly standPartners: readonly string[];
}

/**
 * Opens the batch that plants go into, or checks that the one which is there fits.
 *
 * @throws DomainError `batch/other-stage`, `batch/other-sticking`, `batch/label-taken`
 */
export function openOrJoin(target: Target, told: ToldOfBatch, entry: OpeningEntry): Pick<Opening, 'batch' | 'label'> {
  const there = entry.pages.batches.get(target.batchId);
  if (there) {
    refuseUnlessSameLine(there, target);
    return {};
  }
  const label = told.label === undefined ? undefined : keptLabel(told.label);
  refuseUsedLabel(label, entry.pages);
  const { batchId, stage, stickingId, parent, placeId, standPartners } = target;
  const { rows, container, medium } = told;
  const batch = {
    id: batchId, stage, stickingId, parentId: parent?.id, openingEntryId: entry.id, openingPlaceId: placeId,
    openedOn: entry.observedOn, rows, container, medium, standPartners,
  };
  return { batch, label };
}

function refuseUnlessSameLine(there: KnownBatch, { stage, stickingId, parent }: Target): void {
  if (there.stage !== stage) {
    throw new DomainError('batch/other-stage', `those plants are at stage ${there.stage}, these at ${stage}`, { there: there.stage, asked: stage });
  }
  const isPartOfOneMixture = there.stickingId === undefined && (there.parentId === parent?.id || there.id === parent?.parentId);
  if (there.stickingId !== stickingId || (stickingId === undefined && !isPartOfOneMixture)) {
    throw new DomainError('batch/other-sticking', 'only plants of one sticking stand in one batch; to mix them, say so');
  }
}

function refuseUsedLabel(label: string | undefined, pages: OpenPages): void {
  if (label !== undefined && pages.labels.has(label)) {
    throw new DomainError('batch/label-taken', `${label} has been used before; a label is never used again`, { label });
  }
}
