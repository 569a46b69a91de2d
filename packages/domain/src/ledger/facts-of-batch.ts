import { compareKeys, orderKey, TURN, type Turn } from './content-order.ts';
import type { Counted, Entry, GivenOut, Mixed, Moved, Received, Saying, WentOn } from './entry.ts';
import type { Arrival, Exit, Fact } from './fact.ts';

/** The facts of one batch, in the order in which its books take them. */
export function factsOfBatch(batchId: string, effective: readonly Entry[]): Fact[] {
  return effective
    .flatMap((entry) => deedsFor(batchId, entry.saying).map((deed) => asFact(entry, deed)))
    .sort((a, b) => compareKeys(a.key, b.key));
}

type WithoutTelling<F> = F extends Fact ? Omit<F, 'entryId' | 'day' | 'key'> : never;
/** What a fact says, before it is known which entry told it and when. */
type Deed = WithoutTelling<Fact>;

const asFact = (entry: Entry, deed: Deed): Fact =>
  ({ ...deed, entryId: entry.id, day: entry.observedOn, key: orderKey(entry, turnOf(deed)) }) as Fact;

function turnOf(deed: Deed): Turn {
  switch (deed.act) {
    case 'counted':
    case 'checked':
      return TURN.isSeen;
    case 'carried':
      return TURN.leaves;
    case 'left':
      return deed.effect === 'died' ? TURN.dies : TURN.leaves;
    default:
      return TURN.arrives;
  }
}

function deedsFor(batchId: string, saying: Saying): Deed[] {
  switch (saying.kind) {
    case 'stuck':
      return [{ act: 'arrived', effect: 'stuck', n: saying.n }];
    case 'received':
      return [received(saying)];
    case 'found':
      return [{ act: 'found', n: saying.n }];
    case 'died':
      return [{ act: 'left', effect: 'died', n: saying.n, cause: saying.cause }];
    case 'thrownOut':
      return [{ act: 'left', effect: 'thrownOut', n: saying.n, cause: saying.reason }];
    case 'called':
      return [{ act: 'left', effect: 'notRooted', n: saying.n }];
    case 'counted':
      return whole(saying);
    case 'checked': {
      const { alive, dead, notFound, notLooked } = saying;
      return [{ act: 'checked', alive, dead, notFound, notLooked }];
    }
    case 'held':
    case 'released':
      return [{ act: saying.kind, holdId: saying.holdId }];
    default:
      return passage(batchId, saying);
  }
}

const received = ({ n, rooted, source }: Received): Deed => ({
  act: 'arrived',
  effect: 'received',
  n,
  rooted,
  arrivesHeld: source === 'return',
});

/** A sample moves nothing: it feeds rates, not books. */
const whole = ({ sampleOf, alive, look, rooted, dead }: Counted): Deed[] =>
  sampleOf === undefined ? [{ act: 'counted', alive, look, rooted, dead }] : [];

/** Plants that pass from one batch into another, or out of the programme. */
function passage(batchId: string, saying: Saying): Deed[] {
  switch (saying.kind) {
    case 'lifted':
    case 'potted':
    case 'planted':
      return between(batchId, saying, goingOn(saying), { effect: 'wentIn', n: saying.n });
    case 'restuck':
      return between(batchId, saying, { effect: 'restuckOut', n: saying.n }, { effect: 'restuckIn', n: saying.n });
    case 'identified':
      return between(
        batchId,
        saying,
        { effect: 'identifiedOut', n: saying.n },
        { effect: 'identifiedIn', n: saying.n },
      );
    case 'moved':
      return moving(batchId, saying);
    case 'givenOut':
      return giving(batchId, saying);
    case 'mixed':
      return mixing(batchId, saying);
    default:
      return [];
  }
}

type Leaving = Omit<WithoutTelling<Exit>, 'act'>;
type Arriving = Omit<WithoutTelling<Arrival>, 'act'>;

function between(
  batchId: string,
  { batchId: from, toBatchId: to }: { readonly batchId: string; readonly toBatchId: string },
  leaving: Leaving,
  arriving: Arriving,
): Deed[] {
  const deeds: Deed[] = [];
  if (to === batchId) deeds.push({ act: 'arrived', ...arriving });
  if (from === batchId) deeds.push({ act: 'left', ...leaving });
  return deeds;
}

const STAGE_AFTER = { lifted: 'liner', potted: 'potted', planted: 'planted' } as const;

const goingOn = ({ kind, n, leavesNone }: WentOn): Leaving => ({
  effect: 'wentOn',
  n,
  toStage: STAGE_AFTER[kind],
  leavesNone,
});

function moving(batchId: string, saying: Moved): Deed[] {
  if (saying.toBatchId === undefined) return [{ act: 'carried', placeId: saying.placeId }];

  const { n, rooted } = saying;
  return between(batchId, saying, { effect: 'splitOut', n, rooted }, { effect: 'splitIn', n, rooted });
}

function giving(batchId: string, { batchId: from, toBatchId, n, rooted }: GivenOut): Deed[] {
  if (toBatchId === undefined) return [{ act: 'left', effect: 'givenOut', n, rooted }];

  const ends = { batchId: from, toBatchId };
  return between(batchId, ends, { effect: 'givenAcross', n, rooted }, { effect: 'givenIn', n, rooted });
}

function mixing(batchId: string, { parts, toBatchId }: Mixed): Deed[] {
  const deeds: Deed[] = [];
  const poured = parts.filter((part) => part.batchId === batchId);
  if (toBatchId === batchId) deeds.push({ act: 'arrived', effect: 'mixedIn', n: total(parts) });
  if (poured.length > 0) deeds.push({ act: 'left', effect: 'mixedOut', n: total(poured) });
  return deeds;
}

const total = (parts: Mixed['parts']): number => parts.reduce((sum, { n }) => sum + n, 0);
