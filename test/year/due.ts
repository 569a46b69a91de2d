import { type DueItem, DueItem as Item } from '@sprigline/contract';
import { newId } from '../support/people.ts';
import type { Ground } from './beginning.ts';
import type { Diary } from './diary.ts';
import type { Tray } from './winter.ts';

const EVERY_DAYS = 14;
const later = (day: string, days: number): string => new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** Two weeks after the tray that was left alone longest, of those with something in them. */
function ownDay({ list, lastLook }: Diary, ground: Ground): string {
  const looks = [...list.batches.values()].filter(({ id, place }) => ground.trays.includes(place) && list.count(id) > 0).map(({ id }) => lastLook.get(id) ?? '9999-12-31');
  return later(looks.sort()[0] ?? '', EVERY_DAYS);
}

type Kind = 'firstCheck' | 'movingOn' | 'verdict' | 'gradeCheck' | 'siteCheck';

/** What shows by a day, each with the day on which it is due. @param own batches, or names of sites, with their days */
async function compareDue(diary: Diary, kind: Kind, own: readonly (readonly [thing: string, dueOn: string])[], until = diary.today): Promise<void> {
  const told = Item.array().parse(await diary.get(`due?kind=${kind}&limit=200&until=${until}`, diary.volunteer(3)));
  const byThing = (things: readonly (readonly [string, string])[]): string[] => things.map((one) => one.join(' ')).sort();
  diary.compare(`due by ${until}: ${kind}`, byThing(told.map(({ batch, place, dueOn }) => [batch?.id ?? place.name, dueOn] as const)), byThing(own));
}

const STUCK_ON = '2025-10-11';
const living = (diary: Diary, trays: readonly Tray[]): Tray[] => trays.filter(({ batch }) => diary.list.count(batch) > 0);

/** Six weeks after sticking, until somebody tugs. */
export async function firstChecks(diary: Diary, trays: readonly Tray[]): Promise<void> {
  if (diary.today === '2025-11-15') await compareDue(diary, 'firstCheck', []);
  if (!['2025-11-22', '2026-01-24', '2026-02-28', '2026-03-14'].includes(diary.today)) return;
  await compareDue(diary, 'firstCheck', living(diary, trays).filter(({ batch }) => !diary.lastTug.has(batch)).map(({ batch }) => [batch, later(STUCK_ON, 42)]));
}

/** @param trays that nobody has lifted from; half a year after sticking what is rooted in them goes on */
export const movesOn = (diary: Diary, trays: readonly Tray[]): Promise<void> =>
  compareDue(diary, 'movingOn', living(diary, trays).filter(({ rooted }) => rooted > 0).map(({ batch }) => [batch, later(STUCK_ON, 180)]), later(STUCK_ON, 180));

/** Nothing is left to call but what was not on the sheet: within a year, the mixed ones counted from the day of the mixing. */
export async function verdicts(diary: Diary, left: readonly string[]): Promise<void> {
  const told = Item.array().parse(await diary.get('due?kind=verdict&until=2027-03-28', diary.volunteer(3)));
  diary.compare('what is to be called still', told.map(({ batch }) => batch?.id).sort(), left.toSorted());
}

/** Four weeks after each was looked at last, or potted. */
export const gradeChecks = (diary: Diary, potted: readonly string[]): Promise<void> =>
  compareDue(diary, 'gradeCheck', potted.map((batch) => [batch, later(diary.lastLook.get(batch) ?? '2026-04-18', 28)]), '2026-06-06');

/** The end of the first season; a look in July is too early to be it, one in September is it, and then the spring is next. */
export async function siteChecks(diary: Diary): Promise<void> {
  await compareDue(diary, 'siteCheck', [], '2027-09-29');
  await (diary.today < '2027-09' ? compareDue(diary, 'siteCheck', [['Lowmire Wood', '2027-09-30']], '2028-03-31') : compareDue(diary, 'siteCheck', [['Lowmire Wood', '2028-03-31']], '2028-03-31'));
}

async function rounds(diary: Diary, ground: Ground, until?: string): Promise<DueItem[]> {
  const path = `due?kind=round&placeId=${ground.bench}${until === undefined ? '' : `&until=${until}`}`;
  return Item.array().parse(await diary.get(path, diary.volunteer(3)));
}

/** Also while some phones have not sent their trays: a half walk leaves the round due. */
export async function dueWhereTheTraysAre(diary: Diary, ground: Ground): Promise<void> {
  const told = await rounds(diary, ground, later(diary.today, 60));
  diary.compare('the next round of the bench', told.map(({ dueOn, walk }) => `${walk.name} ${dueOn}`), [`Mist bench ${ownDay(diary, ground)}`]);
}

/** A round that is due is put off, comes back on that day, is walked, and is due two weeks later. */
export async function roundThatIsDue(diary: Diary, ground: Ground): Promise<void> {
  const { list } = diary;
  diary.on('2026-04-14');
  const dueOn = ownDay(diary, ground);
  const days = async (until?: string) => (await rounds(diary, ground, until)).map((item) => ({ dueOn: item.dueOn, day: item.day, reason: item.putOff?.reason }));
  diary.compare('a round is due', await days(), [{ dueOn, day: dueOn, reason: undefined }]);

  const putOff = { id: newId(), kind: 'round', placeId: ground.bench, dueOn, until: '2026-04-16', reason: 'the track is under snow' };
  const answer = await diary.ask('POST', 'due/put-offs', putOff);
  diary.compare('it is put off', answer.statusCode, 204);
  diary.compare('what is put off is hidden', await days(), []);
  diary.on('2026-04-16');
  diary.compare('and comes back', await days(), [{ dueOn, day: '2026-04-16', reason: putOff.reason }]);

  const trays = [...list.batches.values()].filter(({ id, place }) => ground.trays.includes(place) && list.count(id) > 0);
  const [last, ...others] = trays.map(({ id }) => diary.entry({ kind: 'counted', batchId: id, alive: list.count(id), look: 'look' }));
  await diary.send(diary.volunteer(10), others, { door: 'outbox' });
  diary.compare('half a walk leaves it due', (await days()).length, 1);
  if (last) await diary.send(diary.volunteer(11), [last], { door: 'outbox' });
  diary.compare('walked, it is not due', await days(), []);
  diary.compare('until two weeks later', await days('2026-04-30'), [{ dueOn: '2026-04-30', day: '2026-04-30', reason: undefined }]);
}
