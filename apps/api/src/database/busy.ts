import { DomainError } from '@sprigline/domain';

/** PostgreSQL's code for a lock that was not free in time. */
export const LOCK_NOT_FREE = '55P03';

export const busy = (): DomainError =>
  new DomainError('http/busy', 'something long is being written, such as a sheet: nothing was changed, try again in a minute', { retryAfterSeconds: 30 });
