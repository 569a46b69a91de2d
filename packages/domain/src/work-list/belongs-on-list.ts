import { DEFAULT_DAYS } from '../due/waiting-days.ts';
import type { Stage } from '../ledger/entry.ts';

/** What people set out to do with a sheet of paper in their hand. */
export const WORK_LIST_KINDS = ['pottingUp', 'rootCheck', 'calling', 'hardeningOff', 'plantingDay', 'siteCheck'] as const;
export type WorkListKind = (typeof WORK_LIST_KINDS)[number];

/** A batch, as far as it matters for what is to be done with it. */
export interface BatchAtHand {
  readonly stage: Stage;
  /** Plants, at least 0. */
  readonly balance: number;
  /** Of them rooted, as the last look told; nothing: nobody knows. */
  readonly rootedNow: number | undefined;
  readonly held: boolean;
  /** Given to a partner and not counted there yet. */
  readonly unconfirmed: boolean;
  /** Whole days since it was stuck; nothing: nobody knows when. */
  readonly daysSinceStuck: number | undefined;
  /** The tray is over. */
  readonly isCalled: boolean;
  /** It stands in a house, or in something that stands in one. */
  readonly isUnderCover: boolean;
}

export interface WorkListLimits {
  /** Days since sticking before which a tray is left alone; nothing: those of every species. Only for root checks and calling. */
  readonly days?: number | undefined;
  /** Only batches with so many plants or fewer; nothing: all. */
  readonly atMost?: number | undefined;
}

const STAGES: Readonly<Record<WorkListKind, readonly Stage[]>> = {
  pottingUp: ['liner', 'cutting'],
  rootCheck: ['cutting'],
  calling: ['cutting'],
  hardeningOff: ['liner', 'potted'],
  plantingDay: ['potted'],
  siteCheck: ['planted'],
};

/** Stages at which batches may belong on a list of that kind. */
export const stagesOf = (kind: WorkListKind): readonly Stage[] => STAGES[kind];

/**
 * Whether a batch belongs on a list of that kind.
 *
 * What may not be moved is left off the lists that move plants: held ones, and those that
 * somebody else has and has not confirmed. A tray whose sticking day nobody knows is shown rather
 * than forgotten, since nothing says that it is too early.
 *
 * @param limits narrower than the kind asks for; `days` and `atMost` are whole numbers, at least 0
 */
export function belongsOnList(kind: WorkListKind, batch: BatchAtHand, limits: WorkListLimits = {}): boolean {
  if (batch.balance < 1 || batch.balance > (limits.atMost ?? Infinity) || !STAGES[kind].includes(batch.stage)) return false;
  const mayMove = !batch.held && !batch.unconfirmed;
  const isOldEnough = (days: number): boolean => batch.daysSinceStuck === undefined || batch.daysSinceStuck >= days;
  switch (kind) {
    case 'pottingUp':
      return mayMove && (batch.stage === 'liner' || (batch.rootedNow ?? 0) > 0);
    case 'rootCheck':
      // Where all are known to be rooted there is nothing left to find out.
      return !batch.isCalled && (batch.rootedNow ?? 0) < batch.balance && isOldEnough(limits.days ?? DEFAULT_DAYS.firstCheck);
    case 'calling':
      return !batch.isCalled && isOldEnough(limits.days ?? DEFAULT_DAYS.verdict);
    case 'hardeningOff':
      return mayMove && batch.isUnderCover;
    case 'plantingDay':
      return mayMove;
    case 'siteCheck':
      return true;
  }
}
