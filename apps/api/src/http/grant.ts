import { DomainError } from '@sprigline/domain';
import type { Caller } from './caller.ts';

/**
 * The database hides the rows as well; this says why nothing is seen.
 *
 * @throws DomainError `place/grant-needed`
 */
export function refuseWithoutTheGrant({ seesExact }: Caller): void {
  if (!seesExact) throw new DomainError('place/grant-needed', 'ask a coordinator for the right to see exact places');
}
