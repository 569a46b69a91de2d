import { expect, test } from 'vitest';
import { draftKey, keptRounds } from './round-drafts.ts';

const storageOf = (kept: Readonly<Record<string, string>>) => ({ length: Object.keys(kept).length, key: (at: number) => Object.keys(kept)[at] ?? null, getItem: (key: string) => kept[key] ?? null });
const draft = (answers: object) => JSON.stringify({ day: '2026-03-01', seenBy: '', look: 'look', answers });

test('finds the rounds of one person in one programme, and leaves everything else alone', () => {
  const storage = storageOf({
    [draftKey('harrowdale', 'bench', 'me')]: draft({ a: {}, b: {} }),
    [draftKey('harrowdale', 'empty', 'me')]: draft({}),
    [draftKey('harrowdale', 'bench', 'another')]: draft({ a: {} }),
    [draftKey('winterbeck', 'bench', 'me')]: draft({ a: {} }),
    [draftKey('harrowdale', 'broken', 'me')]: '{"answers"',
    'something/else': draft({ a: {} }),
  });

  expect(keptRounds(storage, 'harrowdale', 'me')).toEqual([{ placeId: 'bench', answered: 2, day: '2026-03-01' }]);
});
