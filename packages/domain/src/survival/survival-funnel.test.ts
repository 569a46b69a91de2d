import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Stage, STAGES } from '../ledger/entry.ts';
import type { StageTally } from './stage-tally.ts';
import { type FunnelStage, survivalFunnel } from './survival-funnel.ts';

const EMPTY = { goneOn: 0, died: {}, unaccounted: 0, notRooted: 0, thrownOut: 0, givenOut: 0, restuck: 0, here: 0 };
const row = (donorId: string | undefined, stage: Stage, cameIn: number, ends: Partial<StageTally>): StageTally => ({
  ...EMPTY,
  donorId,
  stage,
  cameIn,
  ...ends,
});
const at = (funnel: readonly FunnelStage[], stage: Stage): FunnelStage => funnel.find((step) => step.stage === stage)!;

describe('survivalFunnel', () => {
  // Two donors. A: 20 stuck; 8 lifted, 2 potted at once, 5 rotted, 2 not rooted, 3 here.
  //   A's 8 liners and the 2 past it: 4 and 2 potted, 1 frosted, 3 here. A's 6 pots (4 + 2): 5 planted, 1 given out.
  //   A's 5 planted: 4 alive of which 1 not found, 1 dead.
  // B: 10 stuck; 1 lifted, 7 thrown out, 2 restuck; the one liner is here. 3 more liners of B were received.
  const TALLIES = [
    row('A', 'cutting', 20, { goneOn: 10, died: { rot: 5 }, notRooted: 2, here: 3 }),
    row('A', 'liner', 10, { goneOn: 6, died: { frost: 1 }, here: 3 }),
    row('A', 'potted', 6, { goneOn: 5, givenOut: 1 }),
    row('A', 'planted', 5, { died: { drought: 1 }, here: 4, notFound: 1 }),
    row('B', 'cutting', 10, { goneOn: 1, thrownOut: 7, restuck: 2 }),
    row('B', 'liner', 4, { here: 4 }),
  ];

  test('agrees with a case worked by hand', () => {
    const funnel = survivalFunnel(TALLIES);

    expect(funnel.map(({ stage }) => stage)).toEqual(['cutting', 'liner', 'potted', 'planted']);
    expect(funnel.map(({ reached }) => reached)).toEqual([30, 14, 6, 5]);
    expect(funnel.map(({ goneOn }) => goneOn)).toEqual([11, 6, 5, 0]);
    expect(funnel.map(({ here }) => here)).toEqual([3, 7, 0, 4]);
    expect(funnel.map(({ donors }) => donors)).toEqual([
      { reached: 2, here: 1, left: 2 },
      { reached: 2, here: 2, left: 2 },
      { reached: 1, here: 0, left: 1 },
      { reached: 1, here: 1, left: 1 },
    ]);
    // 11 of (11 + 5 + 2 + 7); 2 skippers and 4 potted of (6 + 1); 5 of 5; 3 found alive of (3 + 1).
    expect(funnel.map(({ survival }) => survival?.rate)).toEqual([11 / 25, 6 / 7, 1, 3 / 4]);
    expect(funnel.map(({ survival }) => survival?.undecidedShare)).toEqual([3 / 28, 7 / 14, 0, 1 / 5]);
    expect(at(funnel, 'planted').survival?.range).toEqual({ lower: 3 / 5, upper: 4 / 5 });
    expect(at(funnel, 'cutting').byDonor).toMatchObject({
      because: 'few-donors',
      best: { donorId: 'A', successes: 10, plants: 17 },
      worst: { donorId: 'B', successes: 1, plants: 8 },
    });
  });

  test('a donor whose plants went on is not lost, one whose plants all died is', () => {
    const funnel = survivalFunnel([
      row('A', 'cutting', 4, { goneOn: 4 }),
      row('A', 'liner', 4, { here: 4 }),
      row('B', 'cutting', 4, { goneOn: 2, died: { rot: 2 } }),
      row('B', 'liner', 2, { died: { frost: 2 } }),
      row('C', 'potted', 3, { here: 3 }),
      row(undefined, 'liner', 5, { here: 5 }),
    ]);

    expect(funnel.map(({ donors }) => [donors.reached, donors.left])).toEqual([[2, 1], [2, 1], [1, 1], [0, 0]]);
  });

  // Newcombe RG (1998) Stat. Med. 17:857-872, Table I, method 3: 81 of 263, from memory.
  test('prints the Wilson interval of Newcombe 1998 for 81 of 263 settled', () => {
    const funnel = survivalFunnel([
      row('A', 'cutting', 200, { goneOn: 60, died: { rot: 100 }, unaccounted: 40 }),
      row('B', 'cutting', 73, { goneOn: 21, notRooted: 42, here: 10 }),
    ]);
    const { lower, upper } = at(funnel, 'cutting').wilson!;

    expect(Math.abs(lower - 0.2553)).toBeLessThanOrEqual(0.00005);
    expect(Math.abs(upper - 0.3662)).toBeLessThanOrEqual(0.00005);
  });

  test('takes each donor as one unit, however many stickings and rows it has', () => {
    const lift = (donorId: string, goneOn: number) => row(donorId, 'cutting', 5, { goneOn, notRooted: 5 - goneOn });
    const tallies = [4, 5, 3, 5, 4].flatMap((first, i) => [lift(`d${i}`, first), lift(`d${i}`, [4, 5, 3, 4, 3][i]!)]);
    const { byDonor } = at(survivalFunnel(tallies), 'cutting');

    // Ten a donor, 8 10 6 9 7 gone on: the case of five donors worked by hand, design effect 25/16.
    expect(byDonor).toMatchObject({ kind: 'interval', donors: 5, rate: 4 / 5 });
    expect(byDonor?.kind === 'interval' && byDonor.designEffect).toBeCloseTo(25 / 16, 12);
  });

  test('counts plants known only to their stand as plants, and as nobody’s donor', () => {
    const cutting = at(survivalFunnel([row(undefined, 'cutting', 9, { died: { rot: 4 }, here: 5 })]), 'cutting');

    expect(cutting).toMatchObject({ reached: 9, donors: { reached: 0, here: 0 }, survival: { rate: 0 } });
    expect(cutting).not.toHaveProperty('byDonor');
  });

  // A: 10 stuck, 3 mixed away, 4 rotted, 3 here. Of the 3 mixed 1 was lifted, 2 are here.
  test('follows plants into a mixed batch without counting them twice', () => {
    const cutting = at(
      survivalFunnel([
        row('A', 'cutting', 10, { mixed: 3, died: { rot: 4 }, here: 3 }),
        row(undefined, 'cutting', 0, { mixedIn: 3, goneOn: 1, here: 2 }),
      ]),
      'cutting',
    );

    expect(cutting).toMatchObject({ reached: 10, here: 5, mixedAway: 0, survival: { rate: 1 / 5, undecidedShare: 1 / 2 } });
    expect(cutting.byDonor).toMatchObject({ donors: 1, best: { donorId: 'A', successes: 0, plants: 4 } });
  });

  test('has zeros and no rates where nothing came, and no rate while all wait', () => {
    const funnel = survivalFunnel([row('A', 'cutting', 12, { here: 12 })]);

    expect(at(funnel, 'cutting').survival).toMatchObject({ undecidedShare: 1, isRankable: false });
    expect(at(funnel, 'cutting')).not.toHaveProperty('wilson');
    expect(at(funnel, 'liner')).toMatchObject({ reached: 0, donors: { reached: 0, here: 0 } });
    expect(at(funnel, 'liner')).not.toHaveProperty('survival');
    expect(survivalFunnel([])).toHaveLength(4);
  });

  test('says nothing about survival where all were given out, restuck or mixed away', () => {
    const left = row('A', 'cutting', 6, { givenOut: 1, restuck: 2, mixed: 3 });

    expect(at(survivalFunnel([left]), 'cutting')).not.toHaveProperty('survival');
  });

  test('refuses tallies whose plants do not add up', () => {
    expect(() => survivalFunnel([row('A', 'cutting', 5, { here: 4 })])).toThrow(
      expect.objectContaining({ name: 'DomainError', code: 'survival/books-do-not-close' }),
    );
  });
});

/** A donor's way through the stages: at each some go on, some rot, the rest stays. */
const anyDonor = fc
  .record({
    donorId: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'g'),
    stuck: fc.integer({ min: 0, max: 60 }),
    fates: fc.array(fc.record({ on: fc.nat({ max: 40 }), dead: fc.nat({ max: 9 }) }), { minLength: 4, maxLength: 4 }),
  })
  .map(({ donorId, stuck, fates }) => {
    let cameIn = stuck;
    return STAGES.map((stage, i) => {
      const goneOn = stage === 'planted' ? 0 : Math.min(cameIn, fates[i]!.on);
      const rot = Math.min(cameIn - goneOn, fates[i]!.dead);
      const tally = row(donorId, stage, cameIn, { goneOn, died: { rot }, here: cameIn - goneOn - rot });
      cameIn = goneOn;
      return tally;
    });
  });
const anyTallies = fc.array(anyDonor, { maxLength: 12 }).map((list) => list.flat());

describe('any funnel', () => {
  test('loses no plant: what reached a stage is what went on, was lost, left, and is here', () => {
    fc.assert(
      fc.property(anyTallies, (tallies) => {
        for (const step of survivalFunnel(tallies)) {
          const dead = Object.values(step.died).reduce((sum, n) => sum + n, 0);
          expect(step.goneOn + dead + step.here).toBe(step.reached);
        }
      }),
    );
  });

  test('narrows: what went on from a stage is what reached the next', () => {
    fc.assert(
      fc.property(anyTallies, (tallies) => {
        const funnel = survivalFunnel(tallies);
        funnel.slice(1).forEach((step, i) => {
          expect(step.reached).toBe(funnel[i]!.goneOn);
          expect(step.donors.reached).toBeLessThanOrEqual(funnel[i]!.donors.reached);
        });
      }),
    );
  });

  test('is the same in any order of rows', () => {
    fc.assert(
      fc.property(anyTallies, (tallies) => {
        const [forward, backward] = [survivalFunnel(tallies), survivalFunnel(tallies.toReversed())];
        forward.forEach((step, i) => {
          expect(backward[i]).toMatchObject({ reached: step.reached, died: step.died, donors: step.donors });
          expect(backward[i]!.byDonor?.kind).toBe(step.byDonor?.kind);
        });
      }),
    );
  });
});
