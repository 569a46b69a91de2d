import { fieldAddress } from '../../lib/field-address.ts';
import { pageOf } from '../../lib/page-address.ts';
import type { KeptWalk } from '../../lib/phone/pack-shapes.ts';
import type { FoundHere } from './found-here.ts';

/** Where one goes from a label that this phone knows, ready to log. */
export function whereItLeads(programme: string, found: Exclude<FoundHere, { is: 'code' | 'unknown' }>): string {
  if (found.is === 'batch') return fieldAddress(programme, 'batch', found.walk.id, found.batchId);
  if (found.is === 'donorTree') return fieldAddress(programme, 'trip', found.id);
  if (found.walk && found.batchId !== undefined) return fieldAddress(programme, 'batch', found.walk.id, found.batchId);
  // What was not packed is packed there, if there is a signal.
  return found.walk ? walkAddress(programme, found.walk) : fieldAddress(programme, 'round', found.id);
}

const walkAddress = (programme: string, { kind, id }: KeptWalk): string => fieldAddress(programme, kind === 'places' ? 'round' : 'list', id);

const UUID = '[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}';
const PAGES: readonly { readonly page: RegExp; readonly screen: 'round' | 'list' }[] = [
  { page: new RegExp(`^/places/(${UUID})/round$`), screen: 'round' },
  { page: new RegExp(`^/work-lists/(${UUID})(?:/type)?$`), screen: 'list' },
];

/** A page whose code stands on paper, such as a printed list, as it is on the phone; nothing for pages that want a signal. */
export function pageHere(programme: string, path: string): string | undefined {
  const own = pageOf(programme);
  if (!path.startsWith(own)) return undefined;
  for (const { page, screen } of PAGES) {
    const id = page.exec(path.slice(own.length))?.[1];
    if (id !== undefined) return fieldAddress(programme, screen, id);
  }
  return undefined;
}
