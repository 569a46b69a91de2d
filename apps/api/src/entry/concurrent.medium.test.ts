import { verify } from '@sprigline/api';
import type { Entry } from '@sprigline/domain';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { everythingOn, naiveAccount, realAccount } from '../../../../test/naive/account.ts';
import { testApi } from '../../../../test/support/api.ts';
import { booksInDatabase } from '../../../../test/support/books-in-database.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';

const CLIENTS = 20;
const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

/** What everybody logs at once: two hot trays, and where their plants go. */
interface Bench {
  readonly trays: readonly [string, string];
  readonly liners: readonly [string, string];
  readonly splits: readonly [string, string];
}

/** What the books must follow from: every entry that was answered as written. */
interface Model {
  readonly accepted: Map<string, Entry>;
  /** Answered as waiting: for liners that nobody has lifted yet. */
  readonly waiting: Map<string, Entry>;
}

interface Act {
  readonly what: number;
  readonly tray: 0 | 1;
  readonly n: number;
  readonly day: number;
  readonly minute: number | undefined;
  readonly target: number;
  readonly door: 'desk' | 'outbox';
  readonly twice: boolean;
}

const act: fc.Arbitrary<Act> = fc.record({
  what: fc.nat(9),
  tray: fc.constantFrom(0, 1),
  n: fc.integer({ min: 1, max: 9 }),
  // Seldom many on one day without a minute: the naive witness tries all their orders.
  day: fc.noBias(fc.integer({ min: 10, max: 30 })),
  minute: fc.noBias(fc.option(fc.integer({ min: 480, max: 500 }), { nil: undefined, freq: 3 })),
  target: fc.nat(60),
  door: fc.constantFrom('desk', 'outbox', 'outbox'),
  twice: fc.boolean(),
});

function sayingOf({ what, tray, n, target }: Act, bench: Bench, model: Model): Record<string, unknown> {
  const batchId = bench.trays[tray];
  const earlier = [...model.accepted.values()].filter(({ saying }) => saying.kind === 'died');
  const corrected = earlier[target % Math.max(earlier.length, 1)];
  if (corrected && what < 2) return correctionOf(corrected, what, n, bench.liners[tray]);
  switch (what) {
    case 3: return { kind: 'counted', batchId, alive: 5 * n, look: 'tug', rooted: n, dead: [{ n: 1, cause: 'rot' }] };
    case 4: return { kind: 'lifted', batchId, toBatchId: bench.liners[tray], n, placeId: place.bench };
    case 5: return { kind: 'moved', batchId, toBatchId: bench.splits[tray], n, placeId: place.trays[2] };
    case 6: return { kind: 'moved', batchId, placeId: place.trays[n % 3] };
    case 7: return { kind: 'found', batchId, n, reason: 'behind the bench' };
    case 8: return { kind: 'thrownOut', batchId, n, reason: 'mould' };
    default: return { kind: 'died', batchId, n, cause: 'dry', certainty: 'seen' };
  }
}

function correctionOf({ id, saying }: Entry, what: number, n: number, batchId: string): Record<string, unknown> {
  const instead = { observedOn: '2026-03-02', saying: { ...saying, batchId, n } };
  const correction = { entryId: id, sawVersion: id, reason: 'another tray' };
  return what === 0 ? { kind: 'withdrawn', ...correction } : { kind: 'replaced', ...correction, instead };
}

/** One thing each of twenty clients does, all at once; then the books are compared. */
class Burst implements fc.AsyncCommand<Model, Bench> {
  constructor(readonly acts: readonly Act[]) {}
  check = () => true;
  toString = () => `Burst(${JSON.stringify(this.acts)})`;

  async run(model: Model, bench: Bench): Promise<void> {
    const before = { accepted: new Map(model.accepted), waiting: new Map<string, Entry>() };
    await Promise.all(this.acts.map((each) => this.#act(each, bench, before, model)));
    await expectBooksToFollow(bench, model);
  }

  async #act(each: Act, bench: Bench, before: Model, model: Model): Promise<void> {
    const entry = desk.entry(`2026-03-${each.day}`, sayingOf(each, bench, before), { minute: each.minute, clockOffsetSeconds: 3 });
    const send = async () => (await desk.write([entry], { door: each.door }))[0]?.status;
    const statuses = await Promise.all(each.twice ? [send(), send()] : [send()]);
    if (statuses.includes('written')) model.accepted.set(entry.id, asEntry(entry));
    else if (statuses.includes('waiting')) model.waiting.set(entry.id, asEntry(entry));
    const expected = each.door === 'desk' ? ['already', 'written', 'refused'] : ['already', 'waiting', 'written'];
    expect(expected).toEqual(expect.arrayContaining(statuses));
    expect(statuses.filter((status) => status === 'written').length).toBeLessThanOrEqual(1);
  }
}

const asEntry = (entry: ReturnType<Desk['entry']>): Entry =>
  ({ ...entry, receivedOn: '2026-11-25', door: 'outbox' }) as unknown as Entry;

async function expectBooksToFollow(bench: Bench, model: Model): Promise<void> {
  await asOwner(api, async (sql) => {
    for (const batchId of bench.liners) if (await booksInDatabase(sql, batchId)) arrive(batchId, model);
    const entries = [...model.accepted.values()];
    for (const batchId of [...bench.trays, ...bench.liners, ...bench.splits]) {
      const there = await booksInDatabase(sql, batchId);
      if (there) expect(realAccount(there.batch, there.books)).toEqual(naiveAccount(there.batch, everythingOn(batchId, entries)));
    }
  });
}

/** What waited for a batch takes effect when that is there. */
function arrive(batchId: string, { waiting, accepted }: Model): void {
  for (const [id, entry] of waiting) {
    if (!JSON.stringify(entry.saying).includes(batchId)) continue;
    waiting.delete(id);
    accepted.set(id, entry);
  }
}

test('twenty people log two trays at once: nobody is turned away by the others, and the books follow from what was written', async () => {
  const bursts = fc.commands([fc.array(act, { minLength: CLIENTS, maxLength: CLIENTS }).map((acts) => new Burst(acts))], { maxCommands: 4 });
  await fc.assert(
    fc.asyncProperty(bursts, async (commands) => {
      const model: Model = { accepted: new Map(), waiting: new Map() };
      const stuck = await Promise.all(['stuck', 'stuck'].map(async (_, index) => {
        const [batchId, stickingId] = [newId(), newId()];
        const entry = desk.entry('2026-02-01', { kind: 'stuck', batchId, stickingId, n: 40, placeId: place.trays[index]!, bundleId: place.bundles[index]! });
        await desk.write([entry]);
        model.accepted.set(entry.id, asEntry(entry));
        return batchId;
      }));
      const bench: Bench = { trays: [stuck[0]!, stuck[1]!], liners: [newId(), newId()], splits: [newId(), newId()] };
      await fc.asyncModelRun(() => ({ model, real: bench }), commands);
    }),
    { numRuns: 5, endOnFailure: true },
  );
  expect(await verify(api.database)).toEqual([]);
}, 60_000);
