import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/** @throws DomainError `survival/not-a-count`, `survival/no-plants` */
export function refuseUnlessOf(successes: number, plants: number): void {
  if (!isCount(successes) || !isCount(plants) || successes > plants) {
    throw new DomainError('survival/not-a-count', 'both must be whole numbers, successes at most plants', { successes, plants });
  }
  if (plants === 0) throw new DomainError('survival/no-plants', 'a share needs at least one plant');
}

/** @throws DomainError `survival/not-a-level` */
export function refuseUnlessConfidence(confidence: number): void {
  if (!(confidence > 0 && confidence < 1)) throw new DomainError('survival/not-a-level', 'a confidence lies between 0 and 1', { confidence });
}
