import { type DueItem, DueItem as Item } from '@sprigline/contract';
import { newId } from '../support/people.ts';
import type { Ground } from './beginning.ts';
import type { Diary } from './diary.ts';

const EVERY_DAYS = 14;
const later = (day: string, days: number): string => new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** Two weeks after the tray that was left alone longest, of those with something in them. */
function ownDay({ list, lastLook }: Diary, ground: Ground): string {
  const looks = [...list.batches.values()].filter(({ id, place }) => ground.trays.includes(place) && list.count(id) > 0).map(({ id }) => lastLook.get(id) ?? '9999-12-31');
  return later(looks.sort()[0] ?? '', EVERY_DAYS);
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
