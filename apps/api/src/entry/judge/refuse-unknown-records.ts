import type { NewEntry } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { recordsOf } from '../named-ids.ts';
import type { OpenPages } from '../pages/open-pages.ts';

/** @throws DomainError `entry/names-unknown-record` with the property that names it */
export function refuseUnknownRecords(entry: NewEntry, pages: OpenPages): void {
  for (const { table, id, as } of recordsOf({ ...entry, said: entry.saying })) {
    if (pages.record(table, id)) continue;
    throw new DomainError('entry/names-unknown-record', `this programme has no ${table.replace('_', ' ')} with the id in ${as}`, { as, id });
  }
}
