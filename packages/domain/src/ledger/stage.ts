import { DomainError } from '../errors.ts';
import { STAGES, type Stage } from './entry.ts';

/** Whether `stage` comes after `than` on the way from bench to hillside. */
export const isLater = (stage: Stage, than: Stage): boolean => STAGES.indexOf(stage) > STAGES.indexOf(than);

/**
 * A stage may be skipped, never gone back or gone on to twice: another pot at the same stage is a move.
 *
 * @throws DomainError `ledger/stage-gone-back` when `to` is not later than `from`
 */
export function refuseStageGoneBack(from: Stage, to: Stage): void {
  if (isLater(to, from)) return;

  throw new DomainError('ledger/stage-gone-back', `plants that are ${from} cannot go on to ${to}`, { from, to });
}
