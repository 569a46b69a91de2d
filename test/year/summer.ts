import { newId } from '../support/people.ts';
import type { Ground } from './beginning.ts';
import type { Diary } from './diary.ts';
import { gradeChecks } from './due.ts';
import type { Pots } from './spring.ts';
import type { Tray } from './winter.ts';

export interface Summer {
  readonly returned: string;
  /** Stays held. */
  readonly held: string;
}

/** A round of the pots, a gift to a school and one to the world, plants that come back, and a hold with its result. */
export async function summer(diary: Diary, ground: Ground, trays: readonly Tray[], { potted }: Pots): Promise<Summer> {
  await potRound(diary, potted);
  await gifts(diary, ground, potted);
  const returned = await comeBack(diary, ground, trays);
  await holdAndRelease(diary, ground, trays, potted);
  const held = potted[6] ?? '';
  diary.on('2026-07-01');
  await diary.write([{ kind: 'held', batchId: held, reason: 'galls on two shoots' }]);
  diary.list.hold(held, true);
  return { returned, held };
}

async function potRound(diary: Diary, potted: readonly string[]): Promise<void> {
  diary.on('2026-05-09');
  const entries = potted.map((batch, at) => {
    const dead = at % 5 === 0 ? 1 : 0;
    if (dead > 0) diary.list.end(batch, dead, 'died dry');
    return diary.entry({ kind: 'counted', batchId: batch, alive: diary.list.count(batch), look: 'look', dead: dead > 0 ? [{ n: dead, cause: 'dry', certainty: 'likely' }] : [] });
  });
  diary.keepOnPhone(diary.volunteer(4), entries.slice(0, 8), '2026-05-09');
  // Nobody knows how this phone's clock is: its minutes say nothing, and that is told.
  diary.keepOnPhone(diary.volunteer(5), entries.slice(8).map((entry) => ({ ...entry, minute: 700 })), '2026-05-23');
  potted.slice(8).forEach((batch) => diary.mustFlag('clock-unsure', batch));
  await diary.phonesFindSignal();
}

async function gifts(diary: Diary, ground: Ground, potted: readonly string[]): Promise<void> {
  const [toSchool, atSchool, toFair] = [potted[3] ?? '', newId(), potted[4] ?? ''];
  diary.on('2026-05-16');
  await gradeChecks(diary, potted);
  await diary.write([
    { kind: 'givenOut', batchId: toSchool, n: 4, partnerId: ground.school.id, toBatchId: atSchool, placeId: ground.school.bed, label: 'S01' },
    { kind: 'givenOut', batchId: toFair, n: 2, outside: 'The fair at Lowmire' },
  ]);
  diary.list.split(toSchool, atSchool, 4, ground.school.bed);
  diary.list.end(toFair, 2, 'givenOut');
  diary.on('2026-05-30');
  await diary.phonesFindSignal();
  await gradeChecks(diary, potted);
  await diary.write([{ kind: 'counted', batchId: atSchool, alive: 4, look: 'look' }]);
}

/** Three come back from the fair: a new arrival, held until somebody has looked. */
async function comeBack(diary: Diary, ground: Ground, trays: readonly Tray[]): Promise<string> {
  const [batch, sticking] = [newId(), newId()];
  const donor = trays[4]?.donor.id;
  diary.on('2026-06-06');
  await diary.write([{ kind: 'received', batchId: batch, stickingId: sticking, stage: 'potted', n: 3, source: 'return', donorTreeId: donor, placeId: ground.quarantine, label: 'R01' }]);
  diary.list.come(batch, sticking, donor, 'potted', 3, ground.quarantine, 'received', true);
  const planted = diary.entry({ kind: 'planted', batchId: batch, toBatchId: newId(), n: 1, placeId: ground.plots[0] });
  await diary.send(diary.coordinator, [planted], { door: 'desk' }, ['refused']);
  diary.on('2026-06-20');
  await diary.write([{ kind: 'released', batchId: batch, reason: 'two weeks apart, clean' }]);
  diary.list.hold(batch, false);
  return batch;
}

/** All of one donor tree are held; a phone that did not know moves one of them; the result frees them. */
async function holdAndRelease(diary: Diary, ground: Ground, trays: readonly Tray[], potted: readonly string[]): Promise<void> {
  const donorTreeId = trays[5]?.donor.id;
  const moved = potted[5] ?? '';
  diary.on('2026-06-22');
  await diary.write([{ kind: 'held', donorTreeId, reason: 'brown roots at the pot wall', sample: 'H-1' }]);
  diary.on('2026-06-24');
  await diary.send(diary.volunteer(7), [diary.entry({ kind: 'moved', batchId: moved, placeId: ground.quarantine })], { door: 'outbox' });
  diary.list.move(moved, ground.quarantine);
  diary.mustFlag('held-moved', moved);
  diary.on('2026-06-28');
  await diary.write([{ kind: 'released', donorTreeId, reason: 'nothing grew from the sample', result: 'clear' }]);
}
