import type { Counted, Dead, Received, Saying } from '../../src/ledger/entry.ts';

/** What people say of the batch `tray`, as short as they say it. */
export const stuck = (n: number): Saying => ({
  kind: 'stuck',
  batchId: 'tray',
  stickingId: 'sticking',
  n,
  placeId: 'bench 1',
});

export const received = (n: number, more: Partial<Received> = {}): Saying => ({
  kind: 'received',
  batchId: 'tray',
  stickingId: 'sticking',
  stage: 'cutting',
  source: 'opening',
  n,
  placeId: 'bench 1',
  ...more,
});

export const counted = (alive: number, more: Partial<Counted> = {}): Saying => ({
  kind: 'counted',
  batchId: 'tray',
  alive,
  look: 'look',
  dead: [],
  ...more,
});

export const dead = (n: number, cause: string): Dead => ({ n, cause, certainty: 'seen' });

export const died = (n: number, cause = 'dried out'): Saying => ({
  kind: 'died',
  batchId: 'tray',
  n,
  cause,
  certainty: 'likely',
});

export const thrownOut = (n: number, reason = 'bent'): Saying => ({ kind: 'thrownOut', batchId: 'tray', n, reason });

export const called = (n: number): Saying => ({ kind: 'called', batchId: 'tray', n });

export const found = (n: number): Saying => ({ kind: 'found', batchId: 'tray', n, reason: 'behind the tray' });

const wentOn =
  (kind: 'lifted' | 'potted' | 'planted') =>
  (n: number, more: { toBatchId?: string; leavesNone?: boolean } = {}): Saying => ({
    kind,
    batchId: 'tray',
    n,
    toBatchId: 'next',
    placeId: 'frame',
    ...more,
  });
export const lifted = wentOn('lifted');
export const potted = wentOn('potted');
export const planted = wentOn('planted');

/** Into `tray`, from another batch. */
export const liftedIn = (n: number): Saying => ({
  kind: 'lifted',
  batchId: 'source',
  n,
  toBatchId: 'tray',
  placeId: 'frame',
});

export const carried = (placeId: string): Saying => ({ kind: 'moved', batchId: 'tray', placeId });

export const splitOff = (n: number, rooted?: number): Saying => ({
  kind: 'moved',
  batchId: 'tray',
  toBatchId: 'half',
  n,
  rooted,
  placeId: 'bench 2',
});

export const joined = (n: number, rooted?: number): Saying => ({
  kind: 'moved',
  batchId: 'half',
  toBatchId: 'tray',
  n,
  rooted,
  placeId: 'bench 1',
});

export const restuck = (n: number, from = 'tray', toBatchId = 'second try'): Saying => ({
  kind: 'restuck',
  batchId: from,
  n,
  toBatchId,
  stickingId: 'sticking 2',
  placeId: 'bench 2',
});

export const givenOut = (n: number, more: { toBatchId?: string; rooted?: number } = {}): Saying => ({
  kind: 'givenOut',
  batchId: 'tray',
  n,
  ...more,
});

export const givenIn = (n: number, rooted?: number): Saying => ({
  kind: 'givenOut',
  batchId: 'source',
  toBatchId: 'tray',
  n,
  rooted,
});

export const mixed = (toBatchId: string, ...parts: readonly [batchId: string, n: number][]): Saying => ({
  kind: 'mixed',
  toBatchId,
  parts: parts.map(([batchId, n]) => ({ batchId, n })),
  placeId: 'bench 3',
});

export const identified = (n: number, batchId = 'tray', toBatchId = 'known'): Saying => ({
  kind: 'identified',
  batchId,
  toBatchId,
  stickingId: 'sticking',
  n,
  placeId: 'bench 3',
});

export const checked = (
  alive: number,
  more: { dead?: readonly Dead[]; notFound?: number; notLooked?: number } = {},
): Saying => ({ kind: 'checked', batchId: 'tray', alive, dead: [], notFound: 0, notLooked: 0, ...more });

export const held = (): Saying => ({ kind: 'held', batchId: 'tray' });
/** @param holdId the entry whose hold ends; left out, all do */
export const released = (holdId?: string): Saying => ({ kind: 'released', batchId: 'tray', holdId });

export const withdrawn = (entryId: string, sawVersion = entryId): Saying => ({
  kind: 'withdrawn',
  entryId,
  sawVersion,
});

export const replaced = (
  entryId: string,
  observedOn: string,
  saying: Saying,
  { sawVersion = entryId, minute }: { sawVersion?: string; minute?: number } = {},
): Saying => ({ kind: 'replaced', entryId, sawVersion, instead: { observedOn, minute, saying } });

