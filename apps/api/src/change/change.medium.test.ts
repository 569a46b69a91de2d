// What changed, told in an order in which nothing can be missed, and to whom.
import { describe, expect, test } from 'vitest';
import type { Change, Changes } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { keyOf, type KeyAsked } from '../../../../test/support/keys.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, type Member, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const FIRST = '/api/v1/programmes/harrowdale/changes';

/** Somebody who follows the feed as the description says: by `Link`, for ever. */
class Follower {
  next: string;
  readonly told: Change[] = [];
  constructor(readonly headers: Record<string, string>, limit = 3) {
    this.next = `${FIRST}?limit=${limit}`;
  }

  async ask(): Promise<Changes & { status: number; type?: string }> {
    const answer = await api.app.inject({ method: 'GET', url: this.next, headers: this.headers });
    const body = answer.json<Changes & { type?: string }>();
    if (answer.statusCode === 200) {
      this.next = /<([^>]+)>; rel="next"/.exec(String(answer.headers['link']))![1]!;
      this.told.push(...body.changes);
    }
    return { status: answer.statusCode, ...body };
  }

  /** Reads until nothing else has changed, and answers what was new. */
  async catchUp(): Promise<Change[]> {
    const from = this.told.length;
    for (let isDone = false; !isDone;) isDone = (await this.ask()).isUpToDate;
    return this.told.slice(from);
  }
}

const follow = async (headers: Record<string, string>, limit?: number): Promise<Follower> => {
  const follower = new Follower(headers, limit);
  await follower.catchUp();
  return follower;
};
const following = async (asked: KeyAsked): Promise<Follower> => follow(await keyOf(api, asked));
const stand = (more: object = {}) => ({ id: newId(), name: `Stand ${newId()}`, partnerId: null, sensitivity: 0, note: null, ...more });
const thing = (kind: string, id: string) => expect.objectContaining({ kind, id });

describe('whoever follows the feed', () => {
  test('is told of each entry and record once, in parts, with what it stands on', async () => {
    const coordinator = await follow(desk.headers);
    const { batchId, entryId } = await desk.stick(20);
    const counted = desk.entry('2025-11-02', { kind: 'counted', batchId, alive: 18, look: 'tug' });
    await desk.write([counted]);
    const made = stand();
    await desk.post('stands', made);
    await desk.write([desk.entry('2025-11-03', { kind: 'withdrawn', entryId: counted.id, sawVersion: counted.id, reason: 'wrong tray' })]);
    const told = await coordinator.catchUp();
    expect(told).toMatchObject([
      { kind: 'entry', id: entryId, isMade: true, said: 'stuck', on: [{ kind: 'batch', id: batchId }] },
      { kind: 'entry', id: counted.id, said: 'counted', on: [{ kind: 'batch', id: batchId }] },
      { kind: 'stand', id: made.id, isMade: true, said: null, on: [] },
      { kind: 'entry', said: 'withdrawn', on: [{ kind: 'batch', id: batchId }, { kind: 'entry', id: counted.id }] },
    ]);
    expect(await coordinator.catchUp()).toEqual([]);
  });

  test('may begin now', async () => {
    await desk.stick(1);
    const late = new Follower(desk.headers);
    late.next = `${FIRST}?from=now`;
    expect(await late.ask()).toMatchObject({ status: 200, changes: [], isUpToDate: true });
    const { entryId } = await desk.stick(1);
    expect(await late.catchUp()).toMatchObject([{ kind: 'entry', id: entryId }]);
  });

  test('is told of a part of a record as the record that shows it, and of no trip note', async () => {
    const coordinator = await follow(desk.headers);
    const [moved, filled] = [place.trays[1], place.trays[2]];
    await desk.post(`places/${moved}/moves`, { id: newId(), toPlaceId: place.house, movedOn: '2026-07-01' });
    await desk.post(`places/${filled}/fillings`, { id: newId(), filledOn: '2026-07-01', medium: 'grit', howCleaned: 'scrubbed' });
    await asOwner(api, (sql) => sql.query(`INSERT INTO audit (programme_id, delivered_by, act, subject_kind, subject_id) VALUES ($1, 'test', 'trip.note-written', 'trip', $2)`, [place.programmeId, place.tripId]));
    expect(await coordinator.catchUp()).toMatchObject([{ kind: 'place', id: moved, isMade: false }, { kind: 'place', id: filled }]);
  });

  test('misses nothing of a writer who began earlier and committed later', async () => {
    const coordinator = await follow(desk.headers);
    const slow = newId();
    await asOwner(api, async (sql) => {
      await sql.query('BEGIN');
      await sql.query(`INSERT INTO audit (programme_id, id, delivered_by, act, subject_kind, subject_id) VALUES ($1, gen_random_uuid(), 'test', 'stand.changed', 'stand', $2)`, [place.programmeId, slow]);
      const { entryId } = await desk.stick(1);
      expect(await coordinator.catchUp()).toMatchObject([{ id: entryId }]);
      await sql.query('COMMIT');
    });
    expect(await coordinator.catchUp()).toMatchObject([{ kind: 'stand', id: slow }]);
  });

  test('is told of all that eight write at once, each once, whoever else reads', async () => {
    const [one, other] = [await follow(desk.headers), await follow(place.volunteer.headers)];
    let isWriting = true;
    const reading = [one, other].map(async (follower) => {
      while (isWriting) await follower.ask();
      await follower.catchUp();
    });
    const from = [one.told.length, other.told.length];
    const written = (await Promise.all(Array.from({ length: 8 }, async () => {
      const ids: string[] = [];
      for (let n = 0; n < 5; n += 1) ids.push((await desk.stick(1)).entryId);
      return ids;
    }))).flat();
    isWriting = false;
    await Promise.all(reading);
    const told = [one, other].map((follower, at) => follower.told.slice(from[at]).map(({ id }) => id));
    expect(told[0]!.toSorted()).toEqual(written.toSorted());
    expect(told[1]).toEqual(told[0]);
  });

  test('is refused with a place of another list, and with one that this install never came to', async () => {
    const follower = await follow(desk.headers);
    const after = new URL(follower.next, 'http://here').searchParams.get('after')!;
    follower.next = `${FIRST}?limit=3&from=now&after=${after}`;
    expect(await follower.ask()).toMatchObject({ status: 400, type: '/problems/http/bad-cursor' });
    const told = await follow(desk.headers);
    await desk.stick(1);
    await told.catchUp();
    await asOwner(api, (sql) => sql.query(`DELETE FROM change WHERE programme_id = $1 AND place = (SELECT max(place) FROM change WHERE programme_id = $1)`, [place.programmeId]));
    expect(await told.ask()).toMatchObject({ status: 410, type: '/problems/http/restored' });
  });
});

describe('a key', () => {
  test('is let in by its scope, and told of what its other scopes read', async () => {
    const stands = await following({ scopes: ['changes:read', 'stands:read'] });
    const batches = await following({ scopes: ['changes:read', 'batches:read'] });
    const { entryId, batchId } = await desk.stick(1);
    const made = stand();
    await desk.post('stands', made);
    await desk.post('partners', { id: newId(), name: `Group ${newId()}`, since: '2026-01-01', until: null });
    expect(await stands.catchUp()).toMatchObject([{ kind: 'stand', id: made.id }]);
    expect(await batches.catchUp()).toMatchObject([{ kind: 'entry', id: entryId, on: [{ kind: 'batch', id: batchId }] }]);
    const none = new Follower(await keyOf(api, { scopes: ['stands:read'] }));
    expect(await none.ask()).toMatchObject({ status: 403, type: '/problems/key/scope-needed' });
  });

  test('of another programme is told nothing of this one', async () => {
    const other = await keyOf(api, { programme: 'winterbeck', scopes: ['changes:read', 'batches:read', 'stands:read'] });
    expect(await new Follower(other).ask()).toMatchObject({ status: 404 });
    await desk.stick(1);
    const answer = await api.app.inject({ method: 'GET', url: FIRST.replace('harrowdale', 'winterbeck'), headers: other });
    expect(answer.json()).toMatchObject({ changes: expect.not.arrayContaining([expect.objectContaining({ kind: 'entry' })]) });
  });
});

describe('a partner', () => {
  const partner = (name: string) => asOwner(api, async (sql) => {
    const id = newId();
    await sql.query(`INSERT INTO partner (programme_id, id, name, since) VALUES ($1, $2, $3, '2024-01-01')`, [place.programmeId, id, name]);
    return { id, person: await member(api, 'partner', 'harrowdale', { partnerId: id }) };
  });

  test('is told of what is theirs, without entries, authors or what others do', async () => {
    const school = await follow((await member(api, 'partner', 'harrowdale', { partnerId: place.partnerId })).headers, 1);
    const agency = await partner('Winterbeck Agency');
    const theirs = await follow(agency.person.headers);
    const yard = newId();
    await desk.post('places', { id: yard, kind: 'partner', parentId: null, name: 'Yard', walkOrder: 9, rows: null, partnerId: agency.id, note: null, filling: null });
    const { batchId } = await desk.stick(10);
    const given = newId();
    await desk.write([
      desk.entry('2026-03-02', { kind: 'givenOut', batchId, n: 4, partnerId: agency.id, toBatchId: given, placeId: yard }),
      desk.entry('2026-03-03', { kind: 'noted', batchId, text: 'looked over' }),
      desk.entry('2026-03-03', { kind: 'treated', batchId, what: 'water' }),
    ]);
    await desk.post('stands', stand());
    const schools = await school.catchUp();
    expect(schools).toEqual([thing('batch', batchId), ...[batchId, given].toSorted().map((id) => thing('batch', id))]);
    expect(schools.map(({ id: _, at: __, ...rest }) => rest)).toEqual(schools.map(() => ({ kind: 'batch', isMade: false, said: null, on: [] })));
    expect(await school.catchUp()).toEqual([]);
    expect(await theirs.catchUp()).toEqual([thing('batch', given)]);
  });

  test('is told of their stand, its trees and their site, and no more once these are somebody else’s', async () => {
    const agency = await partner('Skell Agency');
    const follower = await follow(agency.person.headers);
    const [own, site] = [stand({ partnerId: agency.id }), { id: newId(), name: `Site ${newId()}`, partnerId: agency.id }];
    await desk.post('stands', own);
    const tree = { id: newId(), label: 'SG-1', standId: own.id, taxonId: place.taxonId };
    await desk.post('donor-trees', tree);
    await desk.post('sites', site);
    await desk.post(`sites/${site.id}/plots`, { id: newId(), name: 'A' });
    expect(await follower.catchUp()).toMatchObject([
      { kind: 'stand', id: own.id, isMade: true }, { kind: 'donor-tree', id: tree.id, isMade: true }, { kind: 'site', id: site.id, isMade: true }, { kind: 'site', id: site.id, isMade: false },
    ]);
    await asOwner(api, (sql) => sql.query('UPDATE stand SET partner_id = NULL WHERE id = $1', [own.id]));
    await desk.post('donor-trees', { ...tree, id: newId(), label: 'SG-2' });
    expect(await follower.catchUp()).toEqual([]);
    expect((await follow(agency.person.headers)).told.map(({ kind }) => kind)).toEqual(['site', 'site']);
  });

  test('is told the batches of a sticking that is of another tree, and what stands in a tray that came to them', async () => {
    const agency = await partner('Corran Agency');
    const yard = newId();
    await desk.post('places', { id: yard, kind: 'partner', parentId: null, name: 'Shed', walkOrder: 9, rows: null, partnerId: agency.id, note: null, filling: null });
    const { batchId, stickingId } = await desk.stick(5, { placeId: place.trays[2] });
    const [school, follower] = [await follow((await member(api, 'partner', 'harrowdale', { partnerId: place.partnerId })).headers), await follow(agency.person.headers)];
    await desk.post(`stickings/${stickingId}/determinations`, { id: newId(), donorTreeId: place.donors[1], determinedOn: '2026-05-01', evidence: 'old label' });
    expect(await school.catchUp()).toContainEqual(thing('batch', batchId));
    await desk.post(`places/${place.trays[2]}/moves`, { id: newId(), toPlaceId: yard, movedOn: '2026-07-02' });
    expect(await follower.catchUp()).toContainEqual(thing('batch', batchId));
  });

  test('with a key, and whoever was removed, are told no more than a partner or nothing', async () => {
    const key = await following({ ofPartner: place.partnerId, scopes: ['changes:read', 'stands:read'] });
    await desk.stick(1);
    expect(await key.catchUp()).toEqual([]);
    const gone: Member = await member(api, 'volunteer');
    const follower = await follow(gone.headers);
    await asOwner(api, (sql) => sql.query('UPDATE person SET left_at = now() WHERE id = $1', [gone.personId]));
    expect(await follower.ask()).toMatchObject({ status: 404, type: '/problems/programme/unknown' });
  });
});
