import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BatchAtHand, belongsOnList, stagesOf, WORK_LIST_KINDS, type WorkListKind, type WorkListLimits } from './belongs-on-list.ts';

const tray: BatchAtHand = { stage: 'cutting', balance: 40, rootedNow: undefined, held: false, unconfirmed: false, daysSinceStuck: 100, isCalled: false, isUnderCover: true };

const CASES: readonly [WorkListKind, string, Partial<BatchAtHand>, boolean, WorkListLimits?][] = [
  ['pottingUp', 'young plants', { stage: 'liner' }, true],
  ['pottingUp', 'young plants that are held', { stage: 'liner', held: true }, false],
  ['pottingUp', 'young plants that a partner has not confirmed', { stage: 'liner', unconfirmed: true }, false],
  ['pottingUp', 'cuttings of which one is rooted', { rootedNow: 1 }, true],
  ['pottingUp', 'cuttings of which nobody knows', {}, false],
  ['pottingUp', 'cuttings of which none is rooted', { rootedNow: 0 }, false],
  ['pottingUp', 'potted plants', { stage: 'potted' }, false],
  ['rootCheck', 'a tray of 42 days', { daysSinceStuck: 42 }, true],
  ['rootCheck', 'a tray of 41 days', { daysSinceStuck: 41 }, false],
  ['rootCheck', 'a tray of 41 days, when 30 are asked for', { daysSinceStuck: 41 }, true, { days: 30 }],
  ['rootCheck', 'a tray stuck nobody knows when', { daysSinceStuck: undefined }, true],
  ['rootCheck', 'a tray in which all are rooted', { rootedNow: 40 }, false],
  ['rootCheck', 'a tray in which all but one are rooted', { rootedNow: 39 }, true],
  ['rootCheck', 'a tray that is held: looking is allowed', { held: true }, true],
  ['rootCheck', 'a tray that was called', { isCalled: true }, false],
  ['calling', 'a tray of a year', { daysSinceStuck: 365 }, true],
  ['calling', 'a tray of a day less', { daysSinceStuck: 364 }, false],
  ['calling', 'a tray of a year with more than asked for', { daysSinceStuck: 365 }, false, { atMost: 39 }],
  ['calling', 'a tray of a year with as many as asked for', { daysSinceStuck: 365 }, true, { atMost: 40 }],
  ['calling', 'a tray that was called before', { daysSinceStuck: 400, isCalled: true }, false],
  ['hardeningOff', 'potted plants in a house', { stage: 'potted' }, true],
  ['hardeningOff', 'potted plants outside already', { stage: 'potted', isUnderCover: false }, false],
  ['hardeningOff', 'cuttings', {}, false],
  ['plantingDay', 'potted plants', { stage: 'potted', isUnderCover: false }, true],
  ['plantingDay', 'potted plants that are held', { stage: 'potted', held: true }, false],
  ['siteCheck', 'planted trees', { stage: 'planted', isUnderCover: false }, true],
  ['siteCheck', 'a plot of which nothing is left', { stage: 'planted', balance: 0 }, false],
];

describe('belongsOnList', () => {
  test.each(CASES)('%s: %s', (kind, _, more, belongs, limits) => {
    expect(belongsOnList(kind, { ...tray, ...more }, limits)).toBe(belongs);
  });

  const batch = fc.record<BatchAtHand>({
    stage: fc.constantFrom('cutting', 'liner', 'potted', 'planted'), balance: fc.nat(200), rootedNow: fc.option(fc.nat(200), { nil: undefined }), held: fc.boolean(),
    unconfirmed: fc.boolean(), daysSinceStuck: fc.option(fc.nat(2_000), { nil: undefined }), isCalled: fc.boolean(), isUnderCover: fc.boolean(),
  });
  const kind = fc.constantFrom(...WORK_LIST_KINDS);

  test('nothing empty and nothing of another stage stands on any list, and what is held is on none that moves plants', () => {
    fc.assert(fc.property(kind, batch, (asked, each) => {
      const belongs = belongsOnList(asked, each);
      if (each.balance === 0 || !stagesOf(asked).includes(each.stage)) expect(belongs).toBe(false);
      if (each.held && ['pottingUp', 'hardeningOff', 'plantingDay'].includes(asked)) expect(belongs).toBe(false);
    }));
  });

  test('narrower limits never bring a batch onto a list', () => {
    fc.assert(fc.property(kind, batch, fc.nat(500), fc.nat(100), fc.nat(100), (asked, each, days, more, atMost) => {
      if (belongsOnList(asked, each, { days: days + more, atMost })) expect(belongsOnList(asked, each, { days })).toBe(true);
    }));
  });
});
