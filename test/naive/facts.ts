import type { BatchIdentity, Dead, Effect, Entry, Look, Saying, Stage } from '@sprigline/domain';

/** What one entry does to one batch, in a few plain verbs. */
export type Deed =
  | { readonly does: 'arrive'; readonly effect: Effect; readonly n: number; readonly rooted?: number | undefined }
  | { readonly does: 'find'; readonly n: number }
  | Leave
  | Count
  | { readonly does: 'check'; readonly alive: number; readonly dead: readonly Dead[]; readonly notFound: number; readonly notLooked: number }
  | { readonly does: 'hold' }
  | { readonly does: 'release'; readonly hold: string | undefined }
  | { readonly does: 'carry'; readonly placeId: string }
  /** Said of the batch, but nothing to its books; a sample, too. */
  | { readonly does: 'note' };

export interface Leave {
  readonly does: 'leave';
  readonly effect: Effect;
  readonly n: number;
  readonly cause?: string | undefined;
  readonly toStage?: Stage | undefined;
  /** What the leaving plants took of the known roots; `unknown` when it should have been told and was not. */
  readonly rooted?: number | 'unknown' | undefined;
  readonly isLift?: boolean;
}

export interface Count {
  readonly does: 'count';
  readonly alive: number;
  readonly look: Look;
  readonly rooted?: number | undefined;
  readonly dead: readonly Dead[];
}

export interface Fact {
  readonly entry: Entry;
  readonly rank: number;
  readonly deed: Deed;
  readonly isOpening: boolean;
  /** Held plants should not have been touched so. */
  readonly disturbs: boolean;
}

const TO_STAGE = { lifted: 'liner', potted: 'potted', planted: 'planted' } as const;
const DISTURBING = new Set(['lifted', 'potted', 'planted', 'moved', 'givenOut']);
const NONE: Count = { does: 'count', alive: 0, look: 'look', dead: [] };

/** The facts of that batch in this entry: none, one, or an act followed by a count of none. */
export function factsOf(entry: Entry, batch: BatchIdentity): Fact[] {
  const { saying } = entry;
  const isSource = 'batchId' in saying && saying.batchId === batch.id;
  const told = [...(isSource ? asSource(saying) : []), ...asEnd(saying, batch.id)];
  const disturbs = isSource && DISTURBING.has(saying.kind);
  return told.map(([rank, deed], index) => ({
    entry,
    rank,
    deed,
    isOpening: entry.id === batch.openingEntryId && deed.does === 'arrive',
    disturbs: disturbs && index === 0,
  }));
}

type Told = readonly [rank: number, deed: Deed];

/** Said of the batch itself. */
function asSource(saying: Saying): Told[] {
  switch (saying.kind) {
    case 'stuck':
      return [[0, { does: 'arrive', effect: 'stuck', n: saying.n }]];
    case 'received': {
      const arrival: Told = [0, { does: 'arrive', effect: 'received', n: saying.n, rooted: saying.rooted }];
      return saying.source === 'return' ? [arrival, [0, { does: 'hold' }]] : [arrival];
    }
    case 'found':
      return [[0, { does: 'find', n: saying.n }]];
    case 'held':
      return [[0, { does: 'hold' }]];
    case 'released':
      return [[0, { does: 'release', hold: saying.holdId }]];
    case 'died':
      return [[1, { does: 'leave', effect: 'died', n: saying.n, cause: saying.cause }]];
    case 'counted':
      return [[2, saying.sampleOf === undefined ? { ...saying, does: 'count' } : { does: 'note' }]];
    case 'checked':
      return [[2, { ...saying, does: 'check' }]];
    default:
      return leaving(saying);
  }
}

/** What takes plants out of the batch that it is said of. */
function leaving(saying: Saying): Told[] {
  switch (saying.kind) {
    case 'thrownOut':
      return [[3, { does: 'leave', effect: 'thrownOut', n: saying.n, cause: saying.reason }]];
    case 'called':
      return [[3, { does: 'leave', effect: 'notRooted', n: saying.n }]];
    case 'lifted':
    case 'potted':
    case 'planted': {
      const isLift = saying.kind === 'lifted';
      const act: Told = [3, { does: 'leave', effect: 'wentOn', n: saying.n, toStage: TO_STAGE[saying.kind], isLift }];
      return saying.leavesNone === true ? [act, [3, NONE]] : [act];
    }
    case 'moved':
      if (saying.toBatchId === undefined) return [[3, { does: 'carry', placeId: saying.placeId }]];
      return [[3, { does: 'leave', effect: 'splitOut', n: saying.n, rooted: saying.rooted ?? 'unknown' }]];
    case 'restuck':
      return [[3, { does: 'leave', effect: 'restuckOut', n: saying.n }]];
    case 'givenOut': {
      const effect = saying.toBatchId === undefined ? 'givenOut' : 'givenAcross';
      return [[3, { does: 'leave', effect, n: saying.n, rooted: saying.rooted ?? 'unknown' }]];
    }
    case 'identified':
      return [[3, { does: 'leave', effect: 'identifiedOut', n: saying.n, rooted: 'unknown' }]];
    default:
      return [[3, { does: 'note' }]];
  }
}

const ARRIVES_AS = {
  lifted: 'wentIn',
  potted: 'wentIn',
  planted: 'wentIn',
  moved: 'splitIn',
  restuck: 'restuckIn',
  givenOut: 'givenIn',
  identified: 'identifiedIn',
} as const;

/** Said of another batch, whose plants come here; and both sides of a mixing. */
function asEnd(saying: Saying, batchId: string): Told[] {
  if (saying.kind === 'mixed') {
    const all = saying.parts.reduce((sum, part) => sum + part.n, 0);
    const came: Told[] = saying.toBatchId === batchId ? [[0, { does: 'arrive', effect: 'mixedIn', n: all }]] : [];
    const left = saying.parts.filter((part) => part.batchId === batchId);
    return [...came, ...left.map(({ n }): Told => [3, { does: 'leave', effect: 'mixedOut', n, rooted: 'unknown' }])];
  }
  if (!('toBatchId' in saying) || saying.toBatchId !== batchId) return [];
  const rooted = 'rooted' in saying ? saying.rooted : undefined;
  return [[0, { does: 'arrive', effect: ARRIVES_AS[saying.kind], n: saying.n, rooted }]];
}
