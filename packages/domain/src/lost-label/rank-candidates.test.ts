import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Candidate, type LostPlant, rankCandidates } from './rank-candidates.ts';

const batch = (id: string, more: Partial<Candidate> = {}): Candidate => ({ id, label: id, stage: 'liner', taxonId: 'juniper', rows: null, foliage: null, balance: 9, missing: 0, lastSeenOn: '2026-11-01', ...more });
const idsOf = (plant: LostPlant, candidates: readonly Candidate[]) => rankCandidates(plant, candidates).map(({ candidate }) => candidate.id);

describe('of which batch a plant without a label may be', () => {
  test.each<[string, LostPlant, readonly Candidate[], readonly string[]]>([
    ['a batch that is short comes first', {}, [batch('a'), batch('b', { missing: 1 })], ['b', 'a']],
    ['the larger gap before the smaller', {}, [batch('a', { missing: 1 }), batch('b', { missing: 4 })], ['b', 'a']],
    ['a short one that stands there before one whose last plants are missing, and that before a whole one', {}, [batch('a'), batch('b', { balance: 0, missing: 9 }), batch('c', { missing: 1 })], ['c', 'b', 'a']],
    ['another stage is none of them', { stage: 'potted' }, [batch('a'), batch('b', { stage: 'potted' })], ['b']],
    ['another species is none of them, one that nobody knows may be', { taxonId: 'yew' }, [batch('a'), batch('b', { taxonId: 'yew' }), batch('c', { taxonId: null })], ['b', 'c']],
    ['its row before no row, and no row before another', { row: 4 }, [batch('a', { rows: '1-3' }), batch('b'), batch('c', { rows: '3-5' }), batch('d', { rows: '4' })], ['c', 'd', 'b', 'a']],
    ['a row told the wrong way round is a row', { row: 4 }, [batch('a', { rows: '5-3' }), batch('b', { rows: '6' })], ['a', 'b']],
    ['a gap in another row still goes before no gap in its own', { row: 4 }, [batch('a', { rows: '4' }), batch('b', { rows: '5', missing: 1 })], ['b', 'a']],
    ['of two gaps the one in its row', { row: 4 }, [batch('a', { rows: '5', missing: 9 }), batch('b', { rows: '4', missing: 1 })], ['b', 'a']],
    ['of a row that lost its label, what was stuck into it, before any gap', { row: 4, isWholeRow: true }, [batch('a', { rows: '5', missing: 9 }), batch('b', { rows: '3-4' }), batch('c', { missing: 2 })], ['b', 'c', 'a']],
    ['foliage as it looks', { foliage: 'juvenile' }, [batch('a', { foliage: 'adult' }), batch('b', { foliage: 'juvenile' }), batch('c')], ['b', 'c', 'a']],
    ['the one not seen for longest, one never seen before all', {}, [batch('a', { lastSeenOn: '2026-11-02' }), batch('b', { lastSeenOn: '2026-10-01' }), batch('c', { lastSeenOn: null })], ['c', 'b', 'a']],
    ['nothing stands there', { row: 1 }, [], []],
  ])('%s', (_, plant, candidates, expected) => {
    expect(idsOf(plant, candidates)).toEqual(expected);
  });

  test('says what speaks for a batch and what against it', () => {
    const [first] = rankCandidates({ row: 2, foliage: 'adult' }, [batch('a', { rows: '2-3', foliage: 'juvenile', missing: 2 })]);
    expect(first?.signs).toEqual(['missing', 'row', 'otherFoliage']);
  });

  const someBatch = fc.record({
    id: fc.uuid(), label: fc.option(fc.string({ maxLength: 3 })), stage: fc.constantFrom('cutting', 'liner', 'potted', 'planted'), taxonId: fc.constantFrom('juniper', 'yew', null),
    rows: fc.constantFrom('1', '2-3', '4', null), foliage: fc.constantFrom('juvenile', 'adult', null), balance: fc.nat({ max: 1 }), missing: fc.nat({ max: 3 }), lastSeenOn: fc.constantFrom('2026-10-01', '2026-11-01', null),
  }) as fc.Arbitrary<Candidate>;
  const somePlant = fc.record({ stage: fc.constantFrom('liner', undefined), taxonId: fc.constantFrom('yew', undefined), row: fc.constantFrom(1, 3, undefined), foliage: fc.constantFrom('adult', undefined), isWholeRow: fc.constantFrom(true, undefined) }) as fc.Arbitrary<LostPlant>;

  test('does not depend on the order in which they are told, names each once, and knowing more never adds one', () => {
    fc.assert(
      fc.property(fc.uniqueArray(someBatch, { selector: ({ id }) => id, maxLength: 12 }), somePlant, (batches, plant) => {
        const ids = idsOf(plant, batches);
        expect(idsOf(plant, [...batches].reverse())).toEqual(ids);
        expect(new Set(ids).size).toBe(ids.length);
        expect(idsOf({}, batches)).toEqual(expect.arrayContaining(ids));
        expect(idsOf({}, batches)).toHaveLength(batches.length);
      }),
    );
  });
});
