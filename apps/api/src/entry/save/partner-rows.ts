import type { Books } from '@sprigline/domain';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch } from '../pages/page-rows.ts';
import { saidInTheEnd } from '../stored-entry.ts';
import type { Row } from './projection-rows.ts';

/**
 * Which partners may see a batch: those on whose land its donor trees stand, at
 * whose site or bench it stands now, and to whom it was given.
 */
export function partnerRows(batch: KnownBatch, books: Books, pages: OpenPages): Row[] {
  const rows = [
    ...batch.standPartners.map((partner_id) => ({ partner_id, relation: 'stand' })),
    ...holderOf(books.stays.at(-1)?.placeId ?? batch.openingPlaceId, pages),
    ...receiversOf(books, pages).map((partner_id) => ({ partner_id, relation: 'hands' })),
  ];
  const distinct = new Map(rows.map((row) => [`${row.relation} ${row.partner_id}`, { batch_id: batch.id, ...row }]));
  return [...distinct.values()];
}

function holderOf(placeId: string, pages: OpenPages): { partner_id: string; relation: string }[] {
  const place = pages.record('place', placeId);
  if (place?.partner_id === undefined) return [];
  const isSite = place.held_kind === 'site' || place.held_kind === 'plot';
  return [{ partner_id: place.partner_id, relation: isSite ? 'site' : 'hands' }];
}

function receiversOf({ movements }: Books, pages: OpenPages): string[] {
  return movements.flatMap(({ effect, entryId }) => {
    if (effect !== 'givenIn') return [];
    const versions = [pages.entries.get(entryId), ...pages.correctionsOf(entryId)];
    const said = versions.flatMap((version) => (version && saidInTheEnd(version)) ?? []).at(-1);
    return said?.kind === 'givenOut' && said.partnerId !== undefined ? [said.partnerId] : [];
  });
}
