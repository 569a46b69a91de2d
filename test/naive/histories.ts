import type { BatchIdentity, Entry, Saying } from '@sprigline/domain';
import fc from 'fast-check';
import { say } from './history-acts.ts';
import { correct } from './history-corrections.ts';
import { act, correction, dayOf, opening, type When } from './history-draw.ts';
import { IDS, open } from './history-openings.ts';
import { minuteOf } from './order.ts';

export interface History {
  readonly batches: readonly BatchIdentity[];
  /** As they came in: out of order, some of them twice. */
  readonly entries: readonly Entry[];
}

/** More facts of a day than this are told with a minute: every order of the rest is tried. */
const MOST_WITHOUT_MINUTE = 4;

/** One to four batches that feed each other, looked at and corrected by many hands; in half of them all on two days. */
export const histories: fc.Arbitrary<History> = fc
  .record({
    openings: fc.array(opening, { minLength: 1, maxLength: 4, size: 'small' }),
    acts: fc.array(act, { maxLength: 16, size: 'medium' }),
    corrections: fc.oneof({ weight: 2, arbitrary: fc.constant([]) }, fc.array(correction, { maxLength: 4 })),
    twice: fc.array(fc.nat(20), { maxLength: 3 }),
    shuffle: fc.nat(1000),
    dense: fc.boolean(),
  })
  .map(({ openings, acts, corrections, twice, shuffle, dense }) => {
    const onDay = (when: When): When => (dense ? { ...when, day: when.day < 9 ? 2 : 9 } : when);
    const batches: BatchIdentity[] = [];
    const said: Entry[] = [];
    openings.forEach((draw, index) => {
      const opened = open(IDS[index] ?? 'A', idOf(draw.when, said), draw, batches);
      batches.push(opened.batch);
      said.push(entry({ ...draw.when, day: draw.day }, opened.saying, said));
    });
    for (const draw of acts) said.push(entry(onDay(draw.when), say(draw, batches, said), said));
    const acted = [...said];
    for (const draw of corrections) {
      const earlier = said.slice(acted.length);
      said.push(entry(draw.when, correct(draw, acted, earlier, batches), said));
    }
    const again = twice.flatMap((number) => said[number] ?? []);
    return { batches, entries: shuffled([...said, ...again], shuffle) };
  });

const idOf = ({ idRank }: When, said: readonly Entry[]): string => `e${idRank}-${said.length}`;

function entry(when: When, saying: Saying, said: readonly Entry[]): Entry {
  const observedOn = dayOf(when.day);
  const sameDay = said.filter((one) => one.observedOn === observedOn && minuteOf(one) === undefined).length;
  return {
    id: idOf(when, said),
    observedOn,
    minute: when.minute ?? (sameDay < MOST_WITHOUT_MINUTE ? undefined : 720 + said.length),
    workdayId: when.workday,
    line: when.workday === undefined ? undefined : when.line,
    receivedOn: dayOf(when.day + when.late),
    door: 'outbox',
    clockUnsure: when.clockUnsure && sameDay < MOST_WITHOUT_MINUTE ? true : undefined,
    authorUnverified: when.authorUnverified ? true : undefined,
    saying,
  };
}

/** The same cards in another order, decided by the number alone. */
function shuffled<T>(cards: readonly T[], number: number): T[] {
  const keyed = cards.map((card, index) => ({ card, key: ((index + 1) * 7919 * (number + 1)) % 10_007 }));
  return keyed.sort((a, b) => a.key - b.key).map(({ card }) => card);
}
