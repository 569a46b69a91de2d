import { DonorHoldings, Funnels, ReadingLines, SiteReading, TimeAxis } from '@sprigline/contract';
import { verify } from '@sprigline/api';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { asOwner } from '../support/people.ts';
import { exactPlaceOf, prepare } from './beginning.ts';
import { beginDiary } from './diary.ts';
import { roundThatIsDue } from './due.ts';
import { hill } from './hill.ts';
import { askEverything, type Crawled, leaksIn, openTo, tracesOfPlaces } from './leaks.ts';
import { everyLine, tracedAndHeld } from './lines.ts';
import { listenToLog } from './log.ts';
import { type Paper, paperFrom } from './paper.ts';
import { STAGES, type Stage, tallyOf } from './plant-list.ts';
import { handedOver, keepForReports, reportsOfThoseDays } from './reports.ts';
import { schoolAsks } from './school.ts';
import { pottingDay, sortTrays } from './spring.ts';
import { summer } from './summer.ts';
import { oneOfEach, peopleWithoutTheGrant } from './whereabouts.ts';
import { stickingNight, winterRounds } from './winter.ts';

// A year lived through the public door, from the trip to the second check on the hill. What the product
// makes of it is compared with a list of plants, a line each, that the script keeps by itself.
const diary = await beginDiary();
const log = listenToLog();
const ground = await prepare(diary);
const trays = await stickingNight(diary, ground);
await winterRounds(diary, ground, trays);
const liners = await sortTrays(diary, ground, trays);
await roundThatIsDue(diary, ground);
const pots = await pottingDay(diary, ground, trays, liners);
keepForReports(diary, ground);
const season = await summer(diary, ground, trays, pots);
await handedOver(diary, ground);
const request = await schoolAsks(diary, ground);
await tracedAndHeld(diary, trays);
const trees = await hill(diary, ground, pots, season);
keepForReports(diary, ground);
await handedOver(diary, ground);
await reportsOfThoseDays(diary, ground);
await everyLine(diary);
log.stop();
const { list } = diary;

const read = async <T>(path: string, contract: { parse: (answer: unknown) => T }): Promise<T> => {
  const answer = await diary.ask('GET', `readings/${path}`, undefined, diary.volunteer(0));
  expect(answer.statusCode, answer.body).toBe(200);
  return contract.parse(answer.json());
};

interface BatchNow { id: string; stage: Stage; balance: number; place: { id: string }; held: boolean; notFound: number; unconfirmed: boolean }

async function allOf<T>(path: string): Promise<T[]> {
  const items: T[] = [];
  for (let next: string | undefined = path; next !== undefined; ) {
    const answer = await diary.ask('GET', next);
    items.push(...answer.json<T[]>());
    next = /<([^>]+)>; rel="next"/.exec(String(answer.headers['link'] ?? ''))?.[1];
  }
  return items;
}

const sumOf = (plants: readonly unknown[]): number => plants.length;
const here = (stage: Stage): number => sumOf(list.plants.filter(({ steps }) => steps.at(-1)?.stage === stage && steps.at(-1)?.end === 'here'));

describe('on its day, and at the end, the product told what the script had noted down', () => {
  test.each(diary.told)('$what', ({ told, own }) => expect(told).toEqual(own));
});

describe('after a year the books are those of the script', () => {
  test('batch by batch', async () => {
    const now = await allOf<BatchNow>('batches?limit=200');
    expect(now.map(({ id, stage, balance, place, held, notFound }) => ({ id, stage, balance, place: place.id, held, notFound })).sort(byId)).toEqual(
      [...list.batches.values()].map(({ id, stage, place, held }) => ({ id, stage, balance: list.count(id), place, held, notFound: list.in(id).filter((plant) => plant.notFound).length })).sort(byId),
    );
    expect(now.filter(({ unconfirmed }) => unconfirmed)).toEqual([]);
  });

  test('sticking by sticking and stage by stage', async () => {
    const rows = await asOwner(diary.api, async (sql) => {
      await sql.query("SELECT set_config('app.programme_id', $1, false)", [diary.coordinator.programmeId]);
      return (await sql.query<Record<string, unknown> & { sticking_id: string; stage: Stage }>('SELECT * FROM tally')).rows;
    });
    expect(rows.length).toBeGreaterThan(60);
    for (const row of rows) {
      expect({
        cameIn: row['came_in'], mixedIn: row['mixed_in'], goneOn: row['gone_on'], died: row['died_of'], unaccounted: row['unaccounted'], notRooted: row['not_rooted'], thrownOut: row['thrown_out'],
        givenOut: row['given_out'], restuck: row['restuck'], mixed: row['mixed'], here: row['here'], notFound: row['not_found'],
      }, `${row.sticking_id} ${row.stage}`).toEqual(tallyOf(list.plants, row.sticking_id, row.stage));
    }
    const told = new Set(rows.map(({ sticking_id: id, stage }) => `${id} ${stage}`));
    const missing = list.plants.flatMap(({ steps }) => steps).filter(({ sticking, stage }) => sticking !== undefined && !told.has(`${sticking} ${stage}`));
    expect(missing).toEqual([]);
  });

  test('flag by flag', async () => {
    const review = await allOf<{ code: string; batch: { id: string } | null }>('review?limit=200');
    expect(review.map(({ code, batch }) => `${code} ${batch?.id ?? ''}`).sort()).toEqual(diary.flags.toSorted());
  });

  test('and nothing is damaged', async () => {
    expect(await verify(diary.api.database)).toEqual([]);
  });
});

describe('what is read from them is what the script would tell', () => {
  test('the funnel of everything', async () => {
    const { groups } = await read('funnels?by=all', Funnels);
    for (const stage of groups[0]?.stages ?? []) {
      const steps = list.plants.flatMap((plant) => plant.steps).filter((step) => step.sticking !== undefined && step.stage === stage.stage);
      expect(stage.reached).toBe(steps.filter(({ how }) => how === 'came').length);
      expect(stage.goneOn).toBe(steps.filter(({ end }) => end === 'goneOn').length);
      expect(stage.here).toBe(steps.filter(({ end }) => end === 'here').length);
      const donors = new Set(list.plants.filter(({ steps: own, donor }) => donor !== undefined && own.some((step) => step.sticking !== undefined && step.stage === stage.stage && step.how === 'came')).map(({ donor }) => donor));
      expect(stage.donors.reached).toBe(donors.size);
    }
  });

  test('what is left of each donor tree, of those that can be told', async () => {
    const { donors } = await read('donors?limit=200', DonorHoldings);
    expect(donors).toHaveLength(20);
    for (const { treeId, plants } of donors) {
      const own = list.plants.filter(({ donor, steps }) => donor === treeId && steps.at(-1)?.end === 'here' && steps.at(-1)?.sticking !== undefined);
      expect(plants).toBe(own.length);
    }
  });

  test('the lines of the stands and the time axis end with what is here', async () => {
    const { inAll } = await read('lines', ReadingLines);
    const { points, incidents } = await read('time-axis', TimeAxis);
    const known = list.plants.filter(({ steps }) => steps.at(-1)?.end === 'here' && steps.at(-1)?.sticking !== undefined);
    expect(inAll).toMatchObject({ here: known.length, planted: here('planted') });
    expect(points.at(-1)).toMatchObject(Object.fromEntries(STAGES.map((stage) => [stage, here(stage)])));
    expect(incidents.map(({ what }) => what)).toEqual(['mould', 'timerFailed']);
  });

  test('the site: planted, alive, and lost at the second check that missed them', async () => {
    const site = await read(`sites/${ground.site}`, SiteReading);
    const planted = list.plants.filter(({ steps }) => steps.some(({ stage }) => stage === 'planted'));
    const ended = (end: string): number => planted.filter(({ steps }) => steps.at(-1)?.end === end).length;
    const sum = (of: (stand: (typeof site.stands)[number]) => number): number => site.stands.reduce((all, stand) => all + of(stand), 0);
    expect(sum((stand) => stand.planted.reached)).toBe(planted.length);
    expect(sum((stand) => stand.planted.here)).toBe(ended('here'));
    expect(sum((stand) => stand.planted.unaccounted)).toBe(ended('unaccounted'));
    expect(sum((stand) => stand.planted.died['browsed'] ?? stand.planted.died['of whatever cause'] ?? 0)).toBe(ended('died browsed'));
    expect(new Set(site.checks.map(({ day }) => day))).toEqual(new Set(['2027-07-10', '2027-09-18']));
  });
});

describe('nobody without the grant is told an exact place', () => {
  const traces = tracesOfPlaces(ground.donors.length);
  let known: Readonly<Record<string, string>> = {};
  let estate: Readonly<Record<string, string>> = {};
  let crawled: readonly (readonly [string, Crawled])[] = [];

  beforeAll(async () => {
    const [tray, tree] = [trays[0], trees[0]];
    if (!tray || tree === undefined) throw new Error('nothing was planted');
    known = await oneOfEach(diary, ground, tray, tree, request);
    const callers = await peopleWithoutTheGrant(diary, ground);
    estate = callers.find(({ who }) => who === 'somebody of the estate')?.headers ?? {};
    crawled = await Promise.all(callers.map(async ({ who, headers, own }) => [who, await askEverything(diary.api, headers, { ...known, ...own })] as const));
  }, 180_000);

  test('in all that they were answered in the year', () => {
    expect(diary.answered.length).toBeGreaterThan(200);
    expect(leaksIn(diary.answered, traces)).toEqual([]);
  });

  test('in any answer or table that can be asked for', () => {
    for (const [who, { texts }] of crawled) expect(leaksIn(texts, traces), who).toEqual([]);
  });

  test('and what was asked for was answered: every route and parameter there is, but for those that want the grant', () => {
    const of = (...some: readonly string[]): Set<string> => new Set(crawled.filter(([who]) => some.includes(who)).flatMap(([, { answered }]) => [...answered]));
    const volunteer = of('a volunteer');
    const wantedGrant = [...(new Map(crawled).get('a volunteer')?.wantedGrant ?? [])].filter((name) => !volunteer.has(name)).toSorted();
    expect(wantedGrant).toEqual(WANTS_THE_GRANT);
    expect(openTo(diary.api, 'volunteer').filter((name) => !volunteer.has(name) && !wantedGrant.includes(name))).toEqual([]);
    const partners = of('somebody of the school', 'somebody of the estate');
    expect(openTo(diary.api, 'partner').filter((name) => !partners.has(name))).toEqual([]);
    // Questions answered with what was asked for: most of those that anybody may ask.
    const few = crawled.filter(([who, { answers }]) => answers < (who === 'a volunteer' ? 250 : who.endsWith('programme') ? 180 : 50));
    expect(few.map(([who, { answers }]) => `${who} ${answers}`)).toEqual([]);
  });

  describe('on any paper', () => {
    const [donor, last] = [ground.donors[0], '2027-09-18'];
    /** What is asked for, and a word that stands on it. */
    const asked: Readonly<Record<string, readonly [query: string, word: string]>> = {
      'labels/pdf': [`of=donorTrees&standId=${donor?.standId}`, 'SG-01'], 'labels/printer/pdf': ['', 'Line up the printer'], 'plans/[id]/pdf': ['', 'Next spring'], 'reports/funder/pdf': [`siteId=${ground.site}`, 'Lowmire Wood'], 'reports/handover/pdf': ['', 'Mist bench'], 'reports/landowner/pdf': [`standId=${donor?.standId}&asOf=${last}`, 'SG-01'],
      'readings/compare/pdf': [`by=recipe&first=${ground.recipeId}&second=not+tried+yet`, 'Heel, talc'],
      'requests/[id]/note/pdf': ['', 'Thornber School'], 'requests/[id]/pick/pdf': ['', 'House A'], 'trace/pdf': [`donorTreeId=${donor?.id}`, 'Tray 1'],
      'treatments/pdf': [`what=all&from=2025-10-01&until=${last}`, 'Tray 8'], 'trips/[id]/cards/pdf': ['which=stuck', 'T20'], 'work-lists/[id]/pdf': ['paper=letter', 'H01'], 'workdays/[id]/pdf': ['', 'Lowmire Wood'],
    };
    let paper: Paper;
    beforeAll(async () => {
      // Of the school's request all has gone: what is picked is asked of one that is open.
      const open = await diary.make<{ id: string }>('requests', { partnerId: ground.school.id, taxonId: ground.taxonId, stage: 'potted', plants: 12, askedOn: diary.today });
      await diary.ask('POST', 'labels/missing', { of: 'donorTrees', standId: donor?.standId ?? '' });
      paper = await paperFrom(diary.api, { ...known, 'requests/[id]/pick/pdf': open.id });
    });
    afterAll(() => paper.stop());

    test('every kind that there is is asked for', () => expect(paper.kinds).toEqual(Object.keys(asked).sort()));

    test.each(Object.entries(asked))('%s', async (kind, [query, word]) => {
      const told = await paper.ask(kind, query, diary.volunteer(1).headers);
      if (kind === 'reports/handover/pdf') expect(told).toBeUndefined();
      else expect(told).toContain(word);
      expect(leaksIn([told ?? ''], traces)).toEqual([]);
      expect(await paper.ask(kind, query, estate)).toBeUndefined();
    });

    test('while a letter does tell the coordinator', async () => {
      const told = await paper.ask('reports/landowner/pdf', `permissionId=${ground.permission}`, diary.coordinator.headers);
      expect(leaksIn([told ?? ''], traces)).not.toEqual([]);
    });
  });

  test.each([
    ['exact_place', () => `donor-trees/${ground.donors[0]?.id ?? ''}/exact-place`, { ...exactPlaceOf(0), directions: 'past the leaning post' }],
    ['trip_note', () => `trips/${ground.tripId}/note`, { note: 'By the shooters’ track, 3.417001 -28.583001' }],
    ['permission', () => `permissions/${ground.permission}`, { grantedBy: 'The lady of the leaning post', land: 'above 3.417001', validFrom: '2025-09-01' }],
  ])('in what the API logs, even when the database breaks over %s', async (table, pathOf, content) => {
    const version = String((await diary.ask('GET', pathOf())).headers['etag']);
    const rule = (sql: string) => asOwner(diary.api, (door) => door.query(sql));
    await rule(`ALTER TABLE ${table} ADD CONSTRAINT "nobody knows this" CHECK (programme_id IS NULL) NOT VALID`);
    const broken = listenToLog();
    const answer = await diary.ask('PUT', pathOf(), content, diary.coordinator, { 'if-match': version }).finally(broken.stop);
    await rule(`ALTER TABLE ${table} DROP CONSTRAINT "nobody knows this"`);
    expect(answer.statusCode, answer.body).toBe(500);
    expect(broken.lines.join('')).toContain('500');
    expect(leaksIn([answer.body, ...broken.lines, ...log.lines], traces)).toEqual([]);
  });

  test('while the search does find what is there: the coordinator is told', async () => {
    const told = await diary.ask('GET', `donor-trees/${ground.donors[0]?.id ?? ''}/exact-place`);
    expect(leaksIn([told.body], traces)).not.toEqual([]);
  });
});

/** Of a volunteer. With a parameter: that alone. */
const WANTS_THE_GRANT = [
  'donor-trees/:id/exact-place', 'permissions', 'permissions ?limit', 'permissions/:id', 'permissions/ending', 'reports/landowner ?permissionId', 'reports/landowner.csv ?permissionId',
  'stands/:id/exact-place', 'trips/:id/note',
].map((route) => `GET /programmes/:programme/${route}`);

const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);
