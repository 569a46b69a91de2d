import type { LabelBearer } from './label-bearer.ts';
import { pageOf } from './page-address.ts';

/** Where a scan lands: a batch with its acts first, a donor tree, the round of a place, or the question what a new label is on. */
export function wayToBearer(programme: string, bearer: LabelBearer): string {
  switch (bearer.is) {
    case 'batch':
      return pageOf(programme, 'batches', bearer.batch.id);
    case 'donorTree':
      return pageOf(programme, 'donor-trees', bearer.id);
    case 'place':
      return pageOf(programme, 'places', bearer.id, 'round');
    case 'unclaimed':
      return `${pageOf(programme, 'scan', 'claim')}?code=${encodeURIComponent(bearer.code)}`;
  }
}
