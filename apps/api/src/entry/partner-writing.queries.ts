import type { NewEntry } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';

/** What a partner may say, by how a batch concerns them: they check the trees at their sites, and count what is in their hands. */
const SAYS: Readonly<Record<string, NewEntry['saying']['kind']>> = { site: 'checked', hands: 'counted' };

const RELATIONS = 'SELECT batch_id, relation FROM batch_partner WHERE programme_id = $1 AND partner_id = $2 AND batch_id = ANY ($3)';

/**
 * Lets through what a partner may write. Anything else refuses the whole request, which then
 * has written nothing: these are questions of rights, not of single numbers.
 *
 * @throws DomainError `batch/unknown` for a batch that does not concern them, `entry/not-for-partners`
 */
export async function refuseWhatPartnersMayNot(sql: UnitOfWork, { programmeId, personId, partnerId }: Caller, entries: readonly NewEntry[]): Promise<void> {
  if (partnerId === undefined) return;

  const batchIds = entries.map(batchOf);
  const rows = await sql.rows<{ batch_id: string; relation: string }>(RELATIONS, [programmeId, partnerId, batchIds]);
  for (const { id, saying, seenBy, writtenBy, workdayId } of entries) {
    const relations = rows.filter(({ batch_id }) => batch_id === batchOf({ saying })).map(({ relation }) => relation);
    if (relations.length === 0) throw new DomainError('batch/unknown', 'no batch with this id concerns you', { entryId: id });
    if (!relations.some((relation) => SAYS[relation] === saying.kind)) {
      throw new DomainError('entry/not-for-partners', 'check the trees at your own sites, count the plants in your own hands, and tell the coordinator the rest', { entryId: id });
    }
    if ([seenBy, writtenBy].some((who) => who !== undefined && who !== personId) || workdayId !== undefined) {
      throw new DomainError('entry/not-for-partners', 'write what you saw yourself, and leave the workday to the coordinator', { entryId: id });
    }
  }
}

/** Only of one batch by name: what reaches over a place reaches over plants of others. */
const batchOf = ({ saying }: Pick<NewEntry, 'saying'>): string | null => ('batchId' in saying ? (saying.batchId ?? null) : null);
