import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as domain from './index.ts';

/** Numbers that formulas trip over, as well as plain ones. */
const edge = fc.oneof(
  fc.constantFrom(0, -0, 1, -1, 2, 0.5, 1e-9, 1e9, 1e-300, 1e300, 5e-324, Number.MAX_VALUE, Number.MAX_SAFE_INTEGER, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
  fc.double(), fc.integer({ min: -3, max: 60 }), fc.double({ min: 0, max: 1, noNaN: true }),
);
const count = fc.oneof({ weight: 3, arbitrary: fc.nat(40) }, fc.constantFrom(0, 1, 1e6, 1e9), { weight: 1, arbitrary: edge });
const few = fc.oneof({ weight: 3, arbitrary: fc.nat(12) }, fc.constantFrom(-1, 0.5, Number.NaN));
const share = fc.oneof({ weight: 2, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) }, fc.constantFrom(0, 1, 1e-12, 1 - 1e-12, 0.5), { weight: 1, arbitrary: edge });
const level = fc.oneof({ weight: 4, arbitrary: fc.constantFrom(0.95, 0.8, undefined, 0.999999) }, { weight: 1, arbitrary: edge });
const list = <T>(of: fc.Arbitrary<T>, maxLength = 6) => fc.array(of, { maxLength });
const time = fc.oneof({ weight: 4, arbitrary: fc.nat(30) }, { weight: 1, arbitrary: edge });
const chance = fc.record({ mean: share, likeness: share });
const outcome = fc.record({ successes: count, plants: count });
const table = fc.record({ first: fc.record({ yes: count, no: count }), second: fc.record({ yes: count, no: count }) });
const followed = fc.record({ until: time, plants: count, happened: fc.boolean(), from: time }, { requiredKeys: ['until', 'plants', 'happened'] });
const stock = list(fc.tuple(fc.constantFrom('a', 'b', 'c', 'd'), few)).map((entries) => new Map(entries));
const occupancy = list(fc.record({ time: fc.nat(99), here: fc.double({ min: 0, max: 1, noNaN: true }) })).map((steps) =>
  steps.map(({ time, here }) => ({ time, shares: [here, 1 - here, 0], standardErrors: [0, 0, 0], atRisk: [1, 0, 0] })).sort((a, b) => a.time - b.time),
);
const dice = fc.integer().map(domain.diceOf);
const arm = list(fc.record({ rooted: count, lost: count, undecided: few, donor: fc.constantFrom('a', 'b', 'c', undefined), tray: fc.constantFrom('1', '2', '3'), also: fc.constantFrom('x', 'y', undefined) }), 8);
const states = fc.constantFrom('a', 'b', 'c', undefined);
const fared = fc.record({ unit: fc.constantFrom('a', 'b', 'c', 'd', 'e'), from: time, unrootedAt: time, aliveAt: time, by: time, end: fc.constantFrom('rooted', 'lost', 'called', 'left', 'waiting'), plants: count });
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
const line = fc.record({
  donorId: fc.constantFrom('a', 'b'), donorLabel: fc.constantFrom('A', ''), ageYears: maybe(edge), ageClass: maybe(fc.constantFrom('juvenile', 'adult', 'old')), cuttings: count, lengthCm: maybe(edge),
  wood: maybe(fc.constantFrom('softwood', 'semiHardwood', 'hardwood')), medium: maybe(fc.constantFrom('', 'sand and peat', 'gravel')), hormonePpm: maybe(edge), hormoneForm: maybe(fc.constantFrom('', 'talc')),
  recipeId: maybe(fc.constantFrom('x', 'y')), trayId: maybe(fc.constantFrom('1', '2')), benchId: maybe(fc.constant('b')), houseId: maybe(fc.constantFrom('h', 'i')), lightHours: maybe(edge), strippedAround: maybe(count),
});
const known = fc.record({ donorId: fc.constantFrom('a', 'b'), goneOn: few, settled: few, lengthCm: maybe(edge), medium: maybe(fc.constant('peat')), hormonePpm: maybe(edge), ageYears: maybe(edge) });
const days = fc.record({ days: few, basis: fc.constantFrom('written', 'history', 'default') });
const question = fc.record({
  lines: list(line, 4), species: fc.constantFrom('Juniperus communis', 'Taxus baccata', 'Quercus').map(domain.speciesRow), day: fc.constantFrom('2026-03-01', '2024-02-29'), past: list(known, 6), firstCheck: days, verdict: days,
  ownFirstRootsDays: maybe(few), donorsWanted: maybe(few), donorsAlready: few, donorsElsewhere: list(fc.constantFrom('a', 'c'), 2), placesPerDonor: maybe(few),
});

const ASKED: Record<string, { args: fc.Arbitrary<unknown[]>; runs?: number }> = {
  wilsonInterval: { args: fc.tuple(count, count, fc.option(edge, { nil: undefined })) },
  clopperPearsonInterval: { args: fc.tuple(count, count, level) },
  midPInterval: { args: fc.tuple(count, count, level) },
  newcombeDifference: { args: fc.tuple(outcome, outcome, fc.option(edge, { nil: undefined })) },
  donorRatioInterval: { args: fc.tuple(list(outcome, 8), level) },
  donorSpread: { args: fc.tuple(list(fc.tuple(fc.constantFrom('a', 'b', 'c'), outcome), 8).map((entries) => new Map(entries))) },
  studentTQuantile: { args: fc.tuple(share, count) },
  sampleSize: { args: fc.tuple(share, share, fc.option(count, { nil: undefined }), level) },
  kaplanMeier: { args: fc.tuple(list(followed), fc.constantFrom('plain', 'log', 'log-log'), level) },
  logRank: { args: fc.tuple(list(list(list(followed, 4), 3), 3)) },
  stateOccupancy: { args: fc.tuple(list(fc.record({ state: states, from: time, until: time, to: states, plants: count }, { requiredKeys: ['state', 'from', 'until', 'plants'] })), fc.constant(['a', 'b', 'c'])) },
  turnbull: { args: fc.tuple(list(fc.record({ after: time, by: time, plants: count })), fc.constantFrom(200, undefined)) },
  fisherExact: { args: fc.tuple(table, level) },
  mantelHaenszel: { args: fc.tuple(list(table), fc.record({ isCorrected: fc.boolean(), confidence: level })) },
  logisticRegression: { args: fc.tuple(list(fc.record({ terms: list(edge, 2), successes: count, plants: count, cluster: fc.constantFrom('a', 'b', 'c', 'd', 'e') }), 8), level) },
  holm: { args: fc.tuple(list(share)) },
  overdispersion: { args: fc.tuple(list(outcome, 8)) },
  randomisedBlocks: { args: fc.tuple(list(fc.constantFrom('p', 'q')), list(fc.constantFrom('x', 'y')), few, dice) },
  trialPower: { args: fc.tuple(fc.record({ donors: few, cuttingsEach: few }), chance, edge, dice, level, fc.constant(20)), runs: 100 },
  commonDifference: { args: fc.tuple(list(table), level) },
  donorDifference: { args: fc.tuple(list(outcome, 8), list(outcome, 8), level) },
  compareArms: { args: fc.tuple(arm, arm, fc.constant(undefined), level) },
  normalQuantile: { args: fc.tuple(share) },
  normalTail: { args: fc.tuple(fc.double({ noNaN: true })) },
  studentTTail: { args: fc.tuple(fc.double({ noNaN: true }), count) },
  chiSquareTail: { args: fc.tuple(edge, count) },
  gammaTail: { args: fc.tuple(edge, share) },
  betaShare: { args: fc.tuple(share, count, count) },
  betaQuantile: { args: fc.tuple(share, few, few) },
  betaBinomial: { args: fc.tuple(few, chance) },
  chanceOfNone: { args: fc.tuple(count, chance) },
  alleleCapture: { args: fc.tuple(count, share) },
  donorsForCapture: { args: fc.tuple(share, share) },
  heterozygosityKept: { args: fc.tuple(edge, count) },
  hillNumber: { args: fc.tuple(list(count), edge) },
  effectiveDonors: { args: fc.tuple(list(count)) },
  largestShare: { args: fc.tuple(list(count)) },
  rarefiedDonors: { args: fc.tuple(list(count), count) },
  chao1: { args: fc.tuple(list(count)) },
  statusNumber: { args: fc.tuple(list(count), edge.map((theta) => () => theta)) },
  donorsPlanted: { args: fc.tuple(list(fc.record({ lots: list(fc.record({ plants: count, chance })) }))) },
  propagulesNeeded: { args: fc.tuple(count, list(share), fc.constantFrom('once', 'each-stage')) },
  stickingPlan: { args: fc.tuple(fc.record({ plants: few, donors: few }), few, chance, level), runs: 150 },
  planOf: { args: fc.tuple(fc.record({ plants: few, donors: few }), few, chance, few) },
  moreDonorsOrCuttings: { args: fc.tuple(few, few, chance, fc.record({ plants: few, donors: few }), share) },
  fitVaryingChance: { args: fc.tuple(list(outcome, 8), fc.record({ mean: share, likeness: share, plants: edge })) },
  forecast: { args: fc.tuple(list(fc.record({ donorId: fc.constantFrom('a', 'b'), plants: count, days: time })), fc.record({ curve: occupancy, likeness: share }), list(time), level) },
  calibrationOf: { args: fc.tuple(list(fc.record({ expected: count, lower: count, upper: count, came: count }))) },
  rootingCurve: { args: fc.tuple(list(fared, 8), level) },
  rootingHistory: { args: fc.tuple(list(fared, 8), fc.record({ mean: share, plants: edge, firstRootsDays: few })) },
  expectedOfLines: { args: fc.tuple(list(fc.oneof({ weight: 4, arbitrary: fc.nat(40) }, { weight: 1, arbitrary: count })), chance, level) },
  secondOpinion: { args: fc.tuple(question) },
  leaveOrCall: { args: fc.tuple(count, time, occupancy) },
  plantingLayout: { args: fc.tuple(stock, fc.tuple(few, few, edge, fc.boolean()).map((of) => { try { return domain.gridOf(...of); } catch { return []; } }), dice), runs: 100 },
  gridOf: { args: fc.tuple(few, few, edge, fc.boolean()) },
  cardDeal: { args: fc.tuple(stock, few, dice) },
  evenCounts: { args: fc.tuple(stock, few) },
  labelCodes: { args: fc.tuple(dice, fc.oneof(few, edge).filter((n) => !(n > 500)), fc.constantFrom(undefined, new Set<string>(), { has: () => true })), runs: 100 },
  checkCharacter: { args: fc.tuple(fc.oneof(fc.string(), fc.string({ unit: 'grapheme' }))) },
  readLabelCode: { args: fc.tuple(fc.oneof(fc.string(), fc.string({ unit: 'grapheme' }))) },
  dilution: { args: fc.tuple(edge, edge, edge) },
  ppmOfPercent: { args: fc.tuple(edge) },
  mediumLitres: { args: fc.tuple(edge, count, edge) },
  traysOnBench: { args: fc.tuple(fc.record({ width: edge, length: edge }), fc.record({ width: edge, length: edge })) },
  dailyLight: { args: fc.tuple(edge, edge) },
};

describe('whatever comes in, out comes an answer or a refusal with a code', () => {
  test.each(Object.entries(ASKED))('%s', (name, { args, runs = 400 }) => {
    const ask = (domain as unknown as Record<string, (...args: unknown[]) => unknown>)[name]!;
    fc.assert(fc.property(args, (given) => {
      let answer: unknown;
      try {
        answer = ask(...given);
      } catch (error) {
        expect(error).toBeInstanceOf(domain.DomainError);
        return;
      }
      expect(holdsNoNumber(answer), `${name} answers ${JSON.stringify(answer)}`).toBe(false);
    }), { numRuns: runs });
  });
});

/** Whether a NaN is anywhere in it. */
function holdsNoNumber(answer: unknown): boolean {
  if (typeof answer === 'number') return Number.isNaN(answer);
  if (answer instanceof Map) return [...answer.values()].some(holdsNoNumber);
  return typeof answer === 'object' && answer !== null && Object.values(answer).some(holdsNoNumber);
}
