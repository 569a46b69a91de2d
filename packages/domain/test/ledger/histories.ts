import fc from 'fast-check';
import { LOOKS, type Entry, type Saying } from '../../src/ledger/entry.ts';
import * as say from './sayings.ts';

/** Few days and small numbers, so that things meet: many facts a day, more taken than is there, clashing counts. */
const day = fc.integer({ min: 1, max: 12 }).map((date) => `2025-10-${String(date).padStart(2, '0')}`);
const few = fc.integer({ min: 1, max: 9 });
const some = fc.integer({ min: 0, max: 9 });
const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });

const deadList = fc.array(
  fc.record({ n: few, cause: fc.constantFrom('mould', 'dried out') }).map(({ n, cause }) => say.dead(n, cause)),
  { maxLength: 2 },
);

const count = fc
  .record({ alive: some, look: fc.constantFrom(...LOOKS), rooted: maybe(some), sampleOf: maybe(few), dead: deadList })
  .map(({ alive, ...more }) => say.counted(alive, more));

const check = fc
  .record({ alive: some, dead: deadList, notFound: some, notLooked: some })
  .map(({ alive, ...more }) => say.checked(alive, more));

const ofN = fc
  .tuple(
    fc.constantFrom(
      say.died,
      say.thrownOut,
      say.called,
      say.found,
      say.splitOff,
      say.joined,
      say.restuck,
      say.givenOut,
      say.identified,
    ),
    few,
  )
  .map(([saying, n]) => (saying as (n: number) => Saying)(n));

const goingOn = fc
  .tuple(fc.constantFrom(say.lifted, say.potted), few, fc.boolean())
  .map(([goOn, n, leavesNone]) => goOn(n, { leavesNone }));

const still = fc.constantFrom(say.held(), say.released(), say.carried('bench 2'));

/** Something said of the tray, in any state that it may be in. */
export const saying: fc.Arbitrary<Saying> = fc.oneof(
  { weight: 4, arbitrary: ofN },
  { weight: 3, arbitrary: count },
  { weight: 2, arbitrary: goingOn },
  check,
  still,
);

const circumstances = fc.record({
  observedOn: day,
  minute: maybe(fc.integer({ min: 600, max: 603 })),
  workdayId: maybe(fc.constantFrom('workday 1', 'workday 2')),
  line: maybe(fc.integer({ min: 1, max: 3 })),
  clockUnsure: fc.constantFrom(undefined, undefined, true),
  authorUnverified: fc.constantFrom(undefined, undefined, undefined, true),
});

type Circumstances = typeof circumstances extends fc.Arbitrary<infer Told> ? Told : never;

const entry = (id: string, told: Circumstances, said: Saying): Entry => ({
  id,
  receivedOn: '2025-10-11',
  door: 'outbox',
  ...told,
  saying: said,
});

/** One entry with this id. */
export const entryWith = (id: string, said: fc.Arbitrary<Saying> = saying): fc.Arbitrary<Entry> =>
  fc.tuple(circumstances, said).map(([told, what]) => entry(id, told, what));

/** A correction of one of `targets`, of a version that may be right, overtaken or unknown. */
const correction = (targets: readonly string[], versions: readonly string[]): fc.Arbitrary<Saying> =>
  fc
    .tuple(fc.constantFrom(...targets), fc.constantFrom(...versions), maybe(saying), day)
    .map(([target, version, instead, when]) => {
      const sawVersion = version === 'first' ? target : version;
      return instead ? say.replaced(target, when, instead, { sawVersion }) : say.withdrawn(target, sawVersion);
    });

/** A tray of up to nine and what was said of it, corrections included; ids `e1`, `e2`, ... then `k1`, `k2`, ... */
export const history: fc.Arbitrary<Entry[]> = fc
  .tuple(fc.array(fc.tuple(circumstances, saying), { maxLength: 10 }), few, fc.integer({ min: 0, max: 4 }))
  .chain(([told, n, corrections]) => {
    const said = told.map(([when, what], index) => entry(`e${index + 2}`, when, what));
    const opening = entry('e1', { ...told[0]?.[0], observedOn: '2025-10-01' } as Circumstances, say.stuck(n));
    const targets = [opening, ...said].map(({ id }) => id);
    const versions = ['first', 'first', 'first', 'k1', 'k2', 'nobody knows'];
    const mends = Array.from({ length: corrections }, (_, index) =>
      entryWith(`k${index + 1}`, correction(targets, versions)),
    );
    return fc.tuple(...mends).map((mended) => [opening, ...said, ...mended]);
  });
