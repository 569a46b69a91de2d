import fc from 'fast-check';

/** The raw numbers of a history: everything random is drawn here, so that a failing one shrinks well. */
const few = fc.constantFrom(1, 2, 3, 4, 5, 6);
const maybe = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(arbitrary, { nil: undefined, freq: 2 });
const rarely = fc.integer({ min: 0, max: 39 }).map((number) => number === 39);

const DAY_IN_MS = 86_400_000;
export const dayOf = (number: number): string =>
  new Date(Date.UTC(2025, 8, 20) + number * DAY_IN_MS).toISOString().slice(0, 10);

/** Clusters of days, and pairs of them 6, 7 and 8 days apart. */
const dayNumber: fc.Arbitrary<number> = fc.constantFrom(2, 2, 2, 3, 3, 4, 5, 9, 9, 10, 10, 11, 17);

export const when = fc.record({
  day: dayNumber,
  minute: maybe(fc.constantFrom(540, 600, 600, 660)),
  workday: maybe(fc.constantFrom('w1', 'w2')),
  line: maybe(fc.constantFrom(1, 2, 3)),
  /** Days from the act to its arrival at the server; -1 and less came from the future. */
  late: fc.constantFrom(0, 0, 0, 0, 1, 5, -1, -2),
  clockUnsure: rarely,
  authorUnverified: rarely,
  idRank: fc.integer({ min: 10, max: 99 }),
});
export type When = typeof when extends fc.Arbitrary<infer T> ? T : never;

export const opening = fc.record({
  how: fc.nat(7),
  from: fc.nat(3),
  stage: fc.nat(3),
  n: fc.constantFrom(3, 5, 10, 12, 15, 20),
  rooted: maybe(fc.nat(3)),
  day: fc.constantFrom(1, 1, 1, 2, 2, 10),
  source: fc.constantFrom('opening', 'return', 'partner', 'purchase'),
  when,
});
export type Opening = typeof opening extends fc.Arbitrary<infer T> ? T : never;

const dead = fc.record({ n: few, cause: fc.constantFrom('dried out', 'mould'), certainty: fc.constant('seen' as const) });

export const act = fc.record({
  what: fc.nat(20),
  batch: fc.constantFrom(0, 0, 1, 1, 2, 3),
  other: fc.nat(3),
  n: few,
  alive: fc.constantFrom(0, 0, 1, 3, 5, 5, 8, 8, 10, 10, 12, 15),
  rooted: maybe(fc.nat(6)),
  look: fc.constantFrom('look', 'tug', 'lifted'),
  sampleOf: fc.integer({ min: 0, max: 9 }).map((number) => (number === 9 ? 12 : undefined)),
  dead: fc.array(dead, { maxLength: 2 }),
  notFound: fc.constantFrom(0, 0, 1, 2, 3),
  notLooked: fc.constantFrom(0, 0, 0, 1, 4),
  leavesNone: fc.boolean(),
  step: fc.nat(2),
  when,
});
export type Act = typeof act extends fc.Arbitrary<infer T> ? T : never;

export const correction = fc.record({
  target: fc.nat(30),
  saw: fc.constantFrom('entry', 'entry', 'last', 'nobody'),
  withdraw: fc.boolean(),
  n: few,
  batch: fc.nat(3),
  day: dayNumber,
  minute: maybe(fc.constantFrom(540, 600)),
  when,
});
export type CorrectionDraw = typeof correction extends fc.Arbitrary<infer T> ? T : never;
