import { DomainError } from '@sprigline/domain';

/**
 * The record that was asked for.
 *
 * @throws DomainError `record/unknown` when there is none in this programme
 */
export function known<T>(record: T | null | undefined): T {
  if (record === null || record === undefined) throw new DomainError('record/unknown', 'nothing here has that id');
  return record;
}
