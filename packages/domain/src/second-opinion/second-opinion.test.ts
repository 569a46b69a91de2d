import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { About, Opinion } from './opinion.ts';
import { honestVerdictDays } from './first-check.ts';
import { ingredientsOf } from './medium.ts';
import type { PastSticking, SecondOpinionQuestion, StickingLine } from './question.ts';
import { secondOpinion } from './second-opinion.ts';
import { rootingChance } from './rooting-chance.ts';
import { rootingPrior, speciesRow } from './species-row.ts';

const line = (more: Partial<StickingLine> = {}): StickingLine => ({ donorId: 'CR-01', donorLabel: 'CR-01', cuttings: 20, ...more });
const past = (goneOn: number, more: Partial<PastSticking> = {}, n = 1): PastSticking[] =>
  Array.from({ length: n }, (_, at) => ({ donorId: `P${at}`, goneOn, settled: 20, ...more }));
const asked = (more: Partial<SecondOpinionQuestion> & { readonly line?: Partial<StickingLine> } = {}): SecondOpinionQuestion => ({
  lines: [line(more.line)], species: undefined, day: '2026-11-20', past: [], firstCheck: { days: 60, basis: 'written' }, verdict: { days: 365, basis: 'default' },
  donorsAlready: 0, donorsElsewhere: [], ...more,
});
const about = (what: About, question: SecondOpinionQuestion): Opinion => secondOpinion(question).find((one) => one.about === what) as Opinion;

const juniper = speciesRow('Juniperus communis');
const spruce = speciesRow('Picea sitchensis');
const UNLIKE_ANY = 'Ilex aquifolium';

/** What is asked; then the verdict, what it rests on, and what it says. */
const TABLE: readonly [name: string, about: About, Parameters<typeof asked>[0], verdict: Opinion['verdict'], basis: Opinion['basis'], says: string][] = [
  ['9 cm of juniper', 'length', { species: juniper, line: { lengthCm: 9 } }, 'unusual', 'species-row', 'below'],
  ['15 cm of juniper', 'length', { species: juniper, line: { lengthCm: 15 } }, 'usual', 'species-row', 'within'],
  ['20 cm of juniper, the end of the range', 'length', { species: juniper, line: { lengthCm: 20 } }, 'usual', 'species-row', 'within'],
  ['12 cm of Sitka spruce', 'length', { species: spruce, line: { lengthCm: 12 } }, 'unusual', 'species-row', 'above'],
  ['18 cm of what is in no table', 'length', { line: { lengthCm: 18 } }, 'unusual', 'common-practice', 'above'],
  ['18 cm, as five own stickings that rooted', 'length', { line: { lengthCm: 18 }, past: past(5, { lengthCm: 18 }, 5) }, 'usual', 'own-history', 'within'],
  ['18 cm, as five own stickings that never rooted', 'length', { line: { lengthCm: 18 }, past: past(0, { lengthCm: 18 }, 5) }, 'unusual', 'common-practice', 'above'],
  ['no length told', 'length', { species: juniper }, 'not-told', 'no-evidence', 'not-told'],
  ['garden soil for juniper', 'medium', { species: juniper, line: { medium: 'garden soil' } }, 'unusual', 'species-row', 'outside'],
  ['sphagnum and sand for juniper', 'medium', { species: juniper, line: { medium: 'Sphagnum moss & sharp sand' } }, 'usual', 'species-row', 'within'],
  ['bark for what is in no table', 'medium', { line: { medium: 'fine bark' } }, 'unusual', 'common-practice', 'outside'],
  ['bark, by which own trays root', 'medium', { line: { medium: 'fine bark' }, past: past(10, { medium: 'bark' }, 3) }, 'usual', 'own-history', 'within'],
  ['a medium whose words tell nothing', 'medium', { line: { medium: 'Mix No. 4' } }, 'no-evidence', 'no-evidence', 'unknown'],
  ['none on juniper', 'hormone', { species: juniper, line: { hormonePpm: 0 } }, 'unusual', 'species-row', 'none-used'],
  ['3,000 on juniper', 'hormone', { species: juniper, line: { hormonePpm: 3_000, hormoneForm: 'talc' } }, 'usual', 'species-row', 'within'],
  ['16,000 on juniper', 'hormone', { species: juniper, line: { hormonePpm: 16_000, hormoneForm: 'talc' } }, 'unusual', 'species-row', 'above'],
  ['a soak of 100 on juniper', 'hormone', { species: juniper, line: { hormonePpm: 100, hormoneForm: 'soak' } }, 'usual', 'common-practice', 'within'],
  ['8,000 on softwood in no table', 'hormone', { line: { hormonePpm: 8_000, hormoneForm: 'talc', wood: 'softwood' } }, 'unusual', 'common-practice', 'above'],
  ['8,000 on wood that nobody told', 'hormone', { line: { hormonePpm: 8_000, hormoneForm: 'talc' } }, 'no-evidence', 'no-evidence', 'wood-not-told'],
  ['20 hours of lamps', 'light', { line: { lightHours: 20 } }, 'unusual', 'common-practice', 'above'],
  ['12 hours of lamps', 'light', { line: { lightHours: 12 } }, 'usual', 'common-practice', 'within'],
  ['a tree of 380 years', 'donor-age', { line: { ageYears: 380 } }, 'unusual', 'common-practice', 'old'],
  ['a tree called old', 'donor-age', { line: { ageClass: 'old' } }, 'unusual', 'common-practice', 'old'],
  ['a tree of 100 years, the end of the step', 'donor-age', { line: { ageYears: 100 } }, 'usual', 'common-practice', 'young-enough'],
  ['a tree called mature: from 10 to over 100', 'donor-age', { line: { ageClass: 'mature' } }, 'not-told', 'no-evidence', 'not-told'],
  ['old ones that root less than young ones here', 'donor-age', { line: { ageYears: 200 }, past: [...past(4, { ageYears: 150 }, 4), ...past(9, { ageYears: 20 }, 4)] }, 'unusual', 'own-history', 'old-roots-less'],
  ['old ones that root as well as young ones here', 'donor-age', { line: { ageYears: 200 }, past: [...past(9, { ageYears: 150 }, 4), ...past(9, { ageYears: 20 }, 4)] }, 'usual', 'own-history', 'old-roots-as-well'],
  ['old ones that root nearly as often: 8 in 20 by 10 in 20', 'donor-age', { line: { ageYears: 200 }, past: [...past(8, { ageYears: 150 }, 4), ...past(10, { ageYears: 20 }, 4)] }, 'usual', 'own-history', 'old-roots-as-well'],
  ['three torn all around', 'stripped', { line: { strippedAround: 3 } }, 'unusual', 'common-practice', 'torn'],
  ['none torn', 'stripped', { line: { strippedAround: 0 } }, 'usual', 'common-practice', 'bark-whole'],
  ['all in one tray', 'places', { line: { trayId: 'T1', houseId: 'A' } }, 'unusual', 'common-practice', 'one-tray'],
  ['in two trays of one house', 'places', { lines: [line({ trayId: 'T1', houseId: 'A' }), line({ trayId: 'T2', houseId: 'A' })] }, 'unusual', 'common-practice', 'one-house'],
  ['in two houses', 'places', { lines: [line({ trayId: 'T1', houseId: 'A' }), line({ trayId: 'T2', houseId: 'B' })] }, 'usual', 'common-practice', 'split'],
  ['in one tray, with plants elsewhere', 'places', { line: { trayId: 'T1', houseId: 'A' }, donorsElsewhere: ['CR-01'] }, 'usual', 'common-practice', 'split'],
  ['three cuttings, which cannot be split', 'places', { line: { cuttings: 3, trayId: 'T1', houseId: 'A' } }, 'not-told', 'no-evidence', 'not-told'],
  ['a plan with one place a tree', 'places', { placesPerDonor: 1 }, 'unusual', 'common-practice', 'one-place'],
  ['one tree where six are wanted', 'donors', { donorsWanted: 6, donorsAlready: 4 }, 'unusual', 'common-practice', 'too-few'],
  ['the sixth of six', 'donors', { donorsWanted: 6, donorsAlready: 5 }, 'usual', 'common-practice', 'enough'],
  ['no plan for the stand', 'donors', {}, 'no-evidence', 'no-evidence', 'no-target'],
  ['one recipe', 'comparison', { line: { recipeId: 'r1' } }, 'no-evidence', 'no-evidence', 'one-recipe'],
  ['each recipe of a tree of its own', 'comparison', { lines: [line({ recipeId: 'r1' }), line({ donorId: 'CR-02', donorLabel: 'CR-02', recipeId: 'r2' })] }, 'unusual', 'common-practice', 'cannot-answer'],
  ['both recipes of both trees', 'comparison', { lines: ['CR-01', 'CR-02'].flatMap((donorId) => ['r1', 'r2'].map((recipeId) => line({ donorId, recipeId }))) }, 'usual', 'common-practice', 'can-answer'],
  ['juniper looked at after 30 days', 'first-check', { species: juniper, firstCheck: { days: 30, basis: 'written' } }, 'unusual', 'species-row', 'too-early'],
  ['juniper looked at after six weeks', 'first-check', { species: juniper, firstCheck: { days: 42, basis: 'default' } }, 'usual', 'species-row', 'late-enough'],
  ['sooner than own roots ever showed', 'first-check', { ownFirstRootsDays: 90 }, 'unusual', 'own-history', 'too-early'],
  ['nobody knows when roots show', 'first-check', {}, 'no-evidence', 'no-evidence', 'unknown'],
  ['juniper called after 120 days', 'verdict', { species: juniper, verdict: { days: 120, basis: 'written' } }, 'unusual', 'common-practice', 'too-early'],
  ['arborvitae called after 120 days', 'verdict', { species: speciesRow('Thuja occidentalis'), verdict: { days: 120, basis: 'written' } }, 'usual', 'common-practice', 'late-enough'],
];

describe('a second opinion', () => {
  test.each(TABLE)('%s: %s', (_, what, question, verdict, basis, says) => expect(about(what, asked(question))).toMatchObject({ verdict, basis, says }));

  test('tells what own cuttings of either kind did, worked by hand', () => {
    const { like, unlike } = about('length', asked({ species: juniper, line: { lengthCm: 8 }, past: [...past(2, { lengthCm: 8 }, 2), ...past(9, { lengthCm: 14 }, 3)] }));
    expect({ like, unlike }).toEqual({ like: { goneOn: 4, settled: 40, donors: 2 }, unlike: { goneOn: 27, settled: 60, donors: 3 } });
  });

  test('names the trees that it is about, and none where it is about all', () => {
    const two = [line({ lengthCm: 9 }), line({ donorId: 'CR-02', donorLabel: 'CR-02', lengthCm: 14 })];
    expect(about('length', asked({ species: juniper, lines: two })).donors).toEqual(['CR-01']);
    expect(about('length', asked({ species: juniper, lines: two.map((one) => ({ ...one, lengthCm: 9 })) })).donors).toEqual([]);
  });

  test('a part stuck without hormone to compare is no mistake', () => {
    expect(about('hormone', asked({ species: juniper, lines: [line({ hormonePpm: 0 }), line({ hormonePpm: 5_000 })] })).verdict).toBe('usual');
  });

  test('looks at everything, the unusual first; what nobody told or knows is never unusual', () => {
    const opinions = secondOpinion(asked({ line: { ageYears: 300 } }));
    const ranks = opinions.map(({ verdict }) => ['unusual', 'usual', 'no-evidence', 'not-told'].indexOf(verdict));
    expect(ranks).toEqual(ranks.toSorted((one, other) => one - other));
    expect(opinions[0]?.about).toBe('donor-age');
    expect(new Set(opinions.map((one) => one.about)).size).toBe(11);
    expect(opinions.filter(({ basis, verdict }) => basis === 'no-evidence' && (verdict === 'unusual' || verdict === 'usual'))).toEqual([]);
  });

  test('the order of lines and a tree told in two lines change nothing', () => {
    const lines = fc.array(fc.record({ donorId: fc.constantFrom('A', 'B', 'C'), donorLabel: fc.constant('x'), cuttings: fc.integer({ min: 1, max: 40 }), lengthCm: fc.integer({ min: 3, max: 30 }), hormonePpm: fc.constantFrom(0, 3_000, 20_000) }), { minLength: 1, maxLength: 6 });
    fc.assert(fc.property(lines, (some) => {
      const said = (own: readonly StickingLine[]) => secondOpinion(asked({ species: juniper, lines: own })).map((one) => `${one.about} ${one.verdict} ${one.says}`).sort();
      expect(said([...some].reverse())).toEqual(said(some));
      expect(said(some.flatMap((one) => [{ ...one, cuttings: one.cuttings * 10 }, { ...one, cuttings: one.cuttings * 10 }]))).toEqual(said(some));
    }));
  });

  test.each([['survival/no-plants', []], ['survival/not-a-count', [line({ cuttings: 2.5 })]], ['survival/not-a-count', [line({ strippedAround: -1 })]]] as const)('answers %s', (code, lines) => {
    expect(() => secondOpinion(asked({ lines }))).toThrow(expect.objectContaining({ code }));
  });
});

describe('what is known of a species', () => {
  test.each([['Juniperus communis', 'Juniperus communis'], ['juniperus COMMUNIS subsp. nana', 'Juniperus communis'], ['Taxus baccata', 'Taxus'], [UNLIKE_ANY, undefined], ['', undefined]])('%s is read at %s', (name, row) => {
    expect(speciesRow(name)?.name).toBe(row);
  });

  test('the prior is the middle of the published shares, else a working rule and called so', () => {
    expect(rootingPrior(speciesRow('Pseudotsuga menziesii'))).toMatchObject({ mean: expect.closeTo(0.49, 12), basis: 'species-row' });
    expect(rootingPrior(juniper)).toMatchObject({ mean: 0.4, basis: 'common-practice' });
  });

  test('own stickings outweigh the prior tree by tree, worked by hand: 12 of 40, and 8 of 20 held beforehand', () => {
    const own = [...past(3, { donorId: 'A' }, 1), ...past(9, { donorId: 'B' }, 1)].map((one, at) => ({ ...one, donorId: `T${at}` }));
    expect(rootingChance(own, juniper)).toMatchObject({ mean: expect.closeTo(20 / 60, 12), donors: 2, goneOn: 12, settled: 40, ownWeight: expect.closeTo(40 / 60, 12) });
  });

  test('an honest verdict takes half a year for slow conifers and for what nobody knows', () => {
    const verdict = { days: 90, basis: 'written' } as const;
    expect([juniper, speciesRow('Thuja plicata'), undefined].map((species) => honestVerdictDays({ species, verdict }))).toEqual([183, 90, 183]);
  });

  test('a medium is read by its words', () => {
    expect(ingredientsOf('sand:peat 1:1')).toEqual(['peat', 'sand']);
    expect(ingredientsOf('sandwich')).toEqual([]);
  });
});
