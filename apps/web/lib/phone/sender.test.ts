import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { counted } from '../../../../test/support/counted-on-a-phone.ts';
import type { Answered, Ask } from './ask.ts';
import { keep, sentLately, unsent } from './outbox.ts';
import { sendAll } from './sender.ts';
import { openStore } from './store.ts';

let nth = 0;
const fresh = () => openStore(`sender-${++nth}`);
const NOW = Date.UTC(2026, 2, 1, 10);
const sending = (store: Awaited<ReturnType<typeof fresh>>, ask: Ask, holdBackMs = 0) => ({ store, ask, now: () => NOW, holdBackMs });
const answered = (status: number, body?: unknown, waitS?: number): Answered => ({ status, body, waitS });

interface Sent { entries: { id: string; writtenBy: string; saying: { alive: number } }[] }

/** A server that writes an id once, and refuses what has more alive than it has ever seen. */
function server() {
  const written = new Map<string, number>();
  const ask: Ask = (_path, { json } = {}) => {
    const { entries } = json as Sent;
    return Promise.resolve(answered(200, {
      entries: entries.map(({ id, saying: { alive } }) => {
        if (alive > 1000) return { id, status: 'refused', flags: [], problem: { type: '/problems/y', title: 'Too many', status: 422 } };
        const status = written.has(id) ? 'already' : 'written';
        written.set(id, (written.get(id) ?? 0) + (status === 'written' ? 1 : 0));
        return { id, status, flags: [] };
      }),
    }));
  };
  return { written, ask };
}

test('sends in order, says who wrote, and keeps only what was refused', async () => {
  const store = await fresh();
  const { written, ask } = server();
  await keep(store, [counted('one'), counted('two', 5000), counted('three')], NOW);
  expect(await sendAll(sending(store, ask))).toEqual({ why: 'done' });
  expect([...written.keys()]).toEqual(['one', 'three']);
  expect(await unsent(store)).toMatchObject([{ id: 'two', refusal: { title: 'Too many' } }]);
  expect((await sentLately(store)).map(({ id }) => id).toSorted()).toEqual(['one', 'three']);
  // What was refused waits for a person, and is not sent again by itself.
  expect(await sendAll(sending(store, () => Promise.reject(new Error('nobody asks'))))).toEqual({ why: 'done' });
});

test('what was logged a moment ago stays, so that it can be undone without a trace', async () => {
  const store = await fresh();
  await keep(store, [counted('one')], NOW - 9_999);
  const asked: string[] = [];
  await sendAll(sending(store, (path) => (asked.push(path), Promise.resolve(answered(200))), 10_000));
  expect(asked).toEqual([]);
});

test.each([
  ['a server that cannot now', answered(503, undefined, 7), { why: 'unheard', waitS: 7 }],
  ['too many requests', answered(429, undefined, 30), { why: 'unheard', waitS: 30 }],
  ['nobody signed in', answered(401), { why: 'signedOut' }],
  ['an answer that says nothing of them', answered(200, '<html>sign in to the network</html>'), { why: 'unheard', waitS: undefined }],
])('keeps everything before %s', async (_, answer, ending) => {
  const store = await fresh();
  await keep(store, [counted('one'), counted('two')], NOW);
  expect(await sendAll(sending(store, () => Promise.resolve(answer)))).toEqual(ending);
  expect(await unsent(store)).toMatchObject([{ id: 'one' }, { id: 'two' }]);
});

test('a request that is refused as a whole is taken apart, until the one that is wrong stands alone', async () => {
  const store = await fresh();
  const { written, ask } = server();
  await keep(store, ['a', 'b', 'c', 'd', 'e'].map((id) => counted(id, id === 'd' ? -1 : 3)), NOW);
  const strict: Ask = (path, asked) => ((asked?.json as Sent).entries.some(({ saying }) => saying.alive < 0) ? Promise.resolve(answered(422, { type: '/problems/malformed', title: 'Malformed', status: 422 })) : ask(path, asked));
  await sendAll(sending(store, strict));
  expect([...written.keys()]).toEqual(['a', 'b', 'c', 'e']);
  expect(await unsent(store)).toMatchObject([{ id: 'd', refusal: { title: 'Malformed' } }]);
});

test('whatever replies are lost, and however often it is broken off, everything arrives once', async () => {
  await fc.assert(fc.asyncProperty(fc.array(fc.boolean(), { minLength: 1, maxLength: 40 }), fc.integer({ min: 1, max: 130 }), async (losses, n) => {
    const store = await fresh();
    const { written, ask } = server();
    let reply = 0;
    const lossy: Ask = async (path, asked) => {
      const answer = await ask(path, asked);
      if (losses[reply++]) throw new TypeError('Failed to fetch');
      return answer;
    };
    const ids = Array.from({ length: n }, (_, at) => `entry-${at}`);
    await keep(store, ids.map((id) => counted(id)), NOW);
    for (let round = 0; (await unsent(store)).length > 0 && round < 60; round += 1) await Promise.all([sendAll(sending(store, lossy)), sendAll(sending(store, lossy))]);
    expect([...written.keys()].toSorted()).toEqual(ids.toSorted());
    expect([...written.values()].every((times) => times === 1)).toBe(true);
    store.close();
  }), { numRuns: 15 });
});
