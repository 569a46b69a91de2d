import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker } from '../../../../test/support/build.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
/** Whoever lost a label looks for it now, so the days are those around today. */
const TODAY = new Date().toISOString().slice(0, 10);

test('a plant without a label may be of what stands there, those short of plants first; an empty tray that lost its last ones too', async () => {
  const stock = await nursery(api, 'lostdale');
  const desk = new Desk(api, stock);
  const [t1, t2, t3] = stock.trays;
  const whole = await desk.stick(20, { placeId: t1, label: 'A1', rows: '1-2' });
  const short = await desk.stick(20, { placeId: t1, label: 'A2', rows: '3' });
  const gone = await desk.stick(5, { placeId: t2, label: 'A3', bundleId: stock.bundles[1] });
  await desk.stick(5, { placeId: t3, label: 'A4' });
  for (const [batchId, alive] of [[whole.batchId, 20], [short.batchId, 17], [gone.batchId, 0]] as const) {
    await desk.write([desk.entry(TODAY, { kind: 'counted', batchId, alive, look: 'look' }, { minute: 1 })]);
  }
  const volunteer = new Asker(api, stock.volunteer.headers, 'lostdale');
  const ask = async (place: string, query = '') => (await volunteer.get(`places/${place}/candidates${query}`)).body;
  const brief = ({ candidates }: { candidates: { label: string; missing: number; signs: string[] }[] }) => candidates.map(({ label, missing, signs }) => [label, missing, ...signs]);

  expect(brief(await ask(stock.bench))).toEqual([['A2', 3, 'missing'], ['A3', 5, 'missing'], ['A4', 0], ['A1', 0]]);
  expect(brief(await ask(t3))).toEqual([['A4', 0]]);
  expect(brief(await ask(t1, '?row=3'))).toEqual([['A2', 3, 'missing', 'row'], ['A1', 0, 'otherRow']]);
  expect(brief(await ask(t1, '?row=2&lost=row')).map(([label]) => label)).toEqual(['A1', 'A2']);
  expect(brief(await ask(stock.bench, '?stage=potted'))).toEqual([]);
  // What was found again is no gap any more.
  await desk.write([desk.entry(TODAY, { kind: 'found', batchId: short.batchId, n: 3, reason: 'behind the tray' }, { minute: 2 })]);
  expect(brief(await ask(t1))).toEqual([['A1', 0], ['A2', 0]]);
});

test('is asked of a place that is there, with what can be seen of a plant', async () => {
  const volunteer = new Asker(api, await signedIn(api, 'volunteer'));
  expect((await volunteer.get(`places/${newId()}/candidates`)).body.type).toBe('/problems/record/unknown');
  expect((await volunteer.get(`places/${newId()}/candidates?row=0`)).status).toBe(422);
  expect((await volunteer.get(`places/${newId()}/candidates?foliage=blue`)).status).toBe(422);
});
