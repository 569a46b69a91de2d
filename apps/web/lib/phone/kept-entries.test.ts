import { expect, test } from 'vitest';
import type { EntryToSend } from '../entry-to-send.ts';
import { changed } from './kept-entries.ts';

const count = (id: string, alive: number): EntryToSend => ({ id, observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z', saying: { kind: 'counted', batchId: 'tray', alive, look: 'look' } });
const none = () => false;
const all = () => true;

test('what has not gone out is told anew under its own id', () => {
  const first = changed(undefined, [count('a', 20)], none, 'a slip');
  const second = changed(first.kept, [count('a', 21)], none, 'a slip');
  expect(second.toKeep).toEqual([count('a', 21)]);
  expect(second.kept.ids).toEqual(['a']);
});

test('what has gone out is corrected, and each correction names the one before', () => {
  const { kept } = changed(undefined, [count('a', 20)], none, 'a slip');
  const once = changed(kept, [count('a', 21)], all, 'a slip');
  expect(once.toKeep).toMatchObject([{ saying: { kind: 'replaced', entryId: 'a', sawVersion: 'a', reason: 'a slip', instead: { observedOn: '2026-03-01', saying: { alive: 21 } } } }]);
  const twice = changed(once.kept, [count('a', 22)], all, 'a slip');
  expect(twice.toKeep).toMatchObject([{ saying: { sawVersion: once.toKeep[0]?.id, instead: { saying: { alive: 22 } } } }]);
  expect(twice.kept.ids).toEqual(['a', once.toKeep[0]?.id, twice.toKeep[0]?.id]);
});

test('told again the same, nothing is sent', () => {
  const { kept } = changed(undefined, [count('a', 20)], none, 'a slip');
  expect(changed(kept, [count('a', 20)], all, 'a slip').toKeep).toEqual([]);
});

test('what is no longer told is withdrawn, as it was last', () => {
  const { kept } = changed(undefined, [count('a', 20)], none, 'a slip');
  const once = changed(kept, [count('a', 21)], all, 'a slip');
  const gone = changed(once.kept, [count('b', 5)], (id) => id === 'a', 'a slip');
  expect(gone.toKeep).toMatchObject([count('b', 5), { saying: { kind: 'withdrawn', entryId: 'a', sawVersion: once.toKeep[0]?.id } }]);
});
