import { fieldAddress } from '../../lib/field-address.ts';
import type { KeptWalk } from '../../lib/phone/pack-shapes.ts';

/** Back to the walk that one came from; to what is on this phone where it is not there. */
export const walkHref = (programme: string, walk: Pick<KeptWalk, 'kind' | 'id'> | undefined): string =>
  walk ? fieldAddress(programme, walk.kind === 'work-lists' ? 'list' : 'round', walk.id) : fieldAddress(programme);
