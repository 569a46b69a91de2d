import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cloneGroups } from './clone-groups.ts';

const groups = (...pairs: [string, string][]) => Object.fromEntries(cloneGroups(pairs.map(([tree, other]) => ({ tree, other }))));

test.each([
  ['nothing stated', [], {}],
  ['two stems of one root', [['b', 'a']], { a: 'a', b: 'a' }],
  ['tied through a third', [['c', 'b'], ['b', 'a']], { a: 'a', b: 'a', c: 'a' }],
  ['two groups that a late statement makes one', [['a', 'b'], ['c', 'd'], ['d', 'b']], { a: 'a', b: 'a', c: 'a', d: 'a' }],
  ['two groups apart', [['a', 'b'], ['d', 'c']], { a: 'a', b: 'a', c: 'c', d: 'c' }],
  ['said twice', [['a', 'b'], ['b', 'a']], { a: 'a', b: 'a' }],
] as const)('%s', (_, pairs, expected) => {
  expect(groups(...(pairs as unknown as [string, string][]))).toEqual(expected);
});

const tree = fc.constantFrom(...'abcdefgh');
const pairs = fc.array(fc.record({ tree, other: tree }).filter((pair) => pair.tree !== pair.other), { maxLength: 12 });

test('the order of the statements changes nothing, and two trees share a group exactly if a chain of pairs leads from one to the other', () => {
  fc.assert(
    fc.property(pairs.chain((stated) => fc.tuple(fc.constant(stated), fc.shuffledSubarray(stated, { minLength: stated.length }))), ([stated, shuffled]) => {
      const all = cloneGroups(stated);
      expect(cloneGroups(shuffled.map((pair) => ({ tree: pair.other, other: pair.tree })))).toEqual(all);

      for (const from of all.keys()) {
        const reached = new Set([from]);
        for (let size = 0; size !== reached.size; ) {
          size = reached.size;
          for (const pair of stated) if (reached.has(pair.tree) || reached.has(pair.other)) reached.add(pair.tree).add(pair.other);
        }
        for (const to of all.keys()) expect(all.get(from) === all.get(to)).toBe(reached.has(to));
        expect(all.get(from)).toBe([...reached].sort()[0]);
      }
    }),
  );
});
