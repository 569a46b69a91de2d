import type { SealedPlace } from '@sprigline/contract';
import { apiPath } from '../../lib/phone/ask.ts';
import { photoWork, type SmallPhoto } from '../../lib/phone/photo-work.ts';
import type { ToKeep, Work } from '../../lib/phone/outbox-item.ts';
import type { BundleTold, NewTreeTold, OutingTold } from './outing-said.ts';

type Kept = Pick<ToKeep, 'id' | 'about'> & { readonly work: Work };

/** Ids are made here, once: sent twice, everything is written once. */
export interface TripBegun extends OutingTold {
  readonly id: string;
}

/** The trip itself. Its permission is chosen at the desk: the API takes the one that covers stand and day, if just one does. */
export const tripWork = (programme: string, trip: TripBegun, about: string): Kept => ({
  id: trip.id,
  about,
  work: { kind: 'record', method: 'POST', path: apiPath(programme, 'trips'), body: trip },
});

export interface TreeDone {
  readonly tripId: string;
  readonly donorTreeId: string;
  readonly label: string;
  /** Only of a tree that nobody has written down before. */
  readonly tree?: NewTreeTold | undefined;
  readonly bundle?: (BundleTold & { readonly id: string }) | undefined;
  /** Sealed already: nothing here has ever been a place in the clear. */
  readonly place?: (SealedPlace & { readonly id: string }) | undefined;
  /** Of the tree: whoever may not see exact places is not shown them. */
  readonly photos?: readonly SmallPhoto[];
  readonly takenOn: string;
  readonly takenBy: string;
}

/** What was done at one tree, in the order in which it can be taken: the tree, what was cut of it, where it stands, how it looks. */
export function treeWork(programme: string, { tripId, donorTreeId, label, tree, bundle, place, photos = [], takenOn, takenBy }: TreeDone): Kept[] {
  const post = (id: string, path: string, body: object): Kept => ({ id, about: label, work: { kind: 'record', method: 'POST', path, body: { id, ...body } } });
  return [
    ...(tree ? [post(donorTreeId, apiPath(programme, 'donor-trees'), tree)] : []),
    ...(bundle ? [post(bundle.id, apiPath(programme, 'trips', tripId, 'bundles'), { ...bundle, donorTreeId })] : []),
    ...(place ? [{ id: place.id, about: label, work: { kind: 'record', method: 'PUT', path: apiPath(programme, 'donor-trees', donorTreeId, 'sealed-place'), body: { sealed: place.sealed } } } as const] : []),
    ...photos.map((photo) => photoWork(programme, photo, { donorTreeId }, { about: label, takenOn, takenBy })),
  ];
}
