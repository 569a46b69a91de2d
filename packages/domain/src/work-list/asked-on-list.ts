import type { WorkListKind } from './belongs-on-list.ts';

/** What there may be to fill in on a line, beside its note. */
export type AskedOnLine =
  | 'alive' | 'rooted' | 'callused' | 'dead' | 'notFound' | 'notLooked' | 'lifted' | 'potted' | 'planted' | 'called'
  | 'moved' | 'placeId' | 'label' | 'container' | 'positions' | 'leavesNone';

const ASKED: Readonly<Record<WorkListKind, readonly AskedOnLine[]>> = {
  pottingUp: ['potted', 'dead', 'label', 'placeId', 'container', 'leavesNone'],
  rootCheck: ['alive', 'rooted', 'callused', 'dead'],
  calling: ['lifted', 'called', 'dead', 'label', 'placeId', 'container'],
  hardeningOff: ['alive', 'dead', 'moved', 'placeId'],
  plantingDay: ['planted', 'dead', 'label', 'placeId', 'positions', 'leavesNone'],
  siteCheck: ['alive', 'dead', 'notFound', 'notLooked'],
};

/** What a list of that kind asks of each batch, in the order of the boxes on paper: what the act needs, and no more. */
export const askedOnList = (kind: WorkListKind): readonly AskedOnLine[] => ASKED[kind];
