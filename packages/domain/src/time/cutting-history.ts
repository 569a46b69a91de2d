import type { Effect } from '../ledger/books.ts';
import type { Look } from '../ledger/entry.ts';

/** What befell one batch while its plants were cuttings. Days are whole days since sticking; what lies before it counts as day 0. */
export interface CuttingBatch {
  /** In the order of its books. */
  readonly movements: readonly CuttingMovement[];
  /** Statements of how many had roots, in any order; those that say nothing of roots are left out. */
  readonly told: readonly RootsToldOn[];
  /** Day of the last look at the whole batch, of whatever strength; left out where nobody looked since it was opened. */
  readonly lastSeen?: number | undefined;
}

export interface CuttingMovement {
  readonly entryId: string;
  readonly day: number;
  readonly effect: Effect;
  readonly n: number;
  /** Of a loss: it happened after this day. */
  readonly lastSeen?: number | undefined;
  /** Of `takenBack`: the entry whose loss it undoes. */
  readonly undoes?: string | undefined;
}

export interface RootsToldOn {
  readonly entryId: string;
  readonly day: number;
  /** Of a count: how many of those here had roots. Of plants that went elsewhere or came (`passing`): how many of these. */
  readonly rooted: number;
  /** Strength of the look; left out for plants in passing. */
  readonly look?: Look | undefined;
  readonly passing?: boolean | undefined;
}

/** How a cutting's time as an unrooted cutting ended. `waiting`: it has not; `left`: it went out of sight, undecided. */
export type CuttingEnd = 'rooted' | 'lost' | 'called' | 'left' | 'waiting';

/** Cuttings that fared alike. Days since sticking. */
export interface FollowedCuttings {
  /** Came under observation: 0, or the day on which they were received or found. */
  readonly from: number;
  /** Last day on which a tug or a lift found them without roots; `from` where nobody has looked for roots since. */
  readonly unrootedAt: number;
  /** Last day on which they were seen as they were: alive; never before `unrootedAt`. */
  readonly aliveAt: number;
  /** Rooted: roots were seen, or they went on. Lost: missed or found dead. Else: last day on which they were there, at least `aliveAt`. */
  readonly by: number;
  readonly end: CuttingEnd;
  readonly plants: number;
}
