import { DespatchNote, PlantRequest, RequestInList, RequestPlants } from '@sprigline/contract';
import { member, newId } from '../support/people.ts';
import type { Ground } from './beginning.ts';
import type { Diary } from './diary.ts';

const WANTED = 12;

/** A school asks for twelve junipers of as many trees; they are set aside and go; two come back, held. @returns the request */
export async function schoolAsks(diary: Diary, ground: Ground): Promise<string> {
  diary.on('2026-08-10');
  const { id } = await diary.make<{ id: string }>('requests', {
    partnerId: ground.school.id, taxonId: ground.taxonId, stage: 'potted', plants: WANTED, mostPerDonor: 1, askedOn: diary.today, wantedOn: '2026-09-01', permissionId: ground.permission,
  });
  const lines = await setAside(diary, ground, id);
  await despatch(diary, ground, id, lines);
  await countedAtSchool(diary, ground, lines);
  await backFromSchool(diary, ground, lines.slice(1, 3).map(({ toBatchId }) => toBatchId));
  return id;
}

interface Line { readonly entryId: string; readonly batchId: string; readonly n: number; readonly toBatchId: string; readonly label: string }

async function setAside(diary: Diary, ground: Ground, id: string): Promise<Line[]> {
  const { list } = diary;
  const { pick, supplies, donorsThere } = RequestPlants.parse(await diary.get(`requests/${id}/plants`, diary.volunteer(5)));
  const may = [...list.batches.values()].filter((batch) => batch.stage === 'potted' && !batch.held && batch.place !== ground.school.bed && list.count(batch.id) > 0);
  const trees = new Set(may.map((batch) => list.in(batch.id)[0]?.donor));
  diary.compare('what can be picked', { ...pick, stops: 0, donorsThere }, { plants: WANTED, short: 0, donors: Math.min(WANTED, trees.size), stops: 0, isShortestProven: true, donorsThere: trees.size });
  const picked = supplies.filter(({ proposed }) => proposed > 0);
  diary.compare('what is picked is free to go', picked.filter(({ batchId }) => !may.some((batch) => batch.id === batchId)), []);
  diary.compare('one of each tree', new Set(picked.map(({ batchId }) => list.in(batchId)[0]?.donor)).size, WANTED);

  await diary.put(`requests/${id}/reservations`, { lines: picked.map(({ batchId, proposed }) => ({ batchId, n: proposed })) }, `requests/${id}`);
  const open = RequestInList.array().parse(await diary.get('requests?open=yes', diary.volunteer(5)));
  diary.compare('what is set aside', open.map(({ reserved, covered, gone }) => ({ reserved, covered, gone })), [{ reserved: WANTED, covered: WANTED, gone: 0 }]);
  return picked.map(({ batchId, proposed }, at) => ({ entryId: newId(), batchId, n: proposed, toBatchId: newId(), label: `S${at + 10}` }));
}

async function despatch(diary: Diary, ground: Ground, id: string, lines: readonly Line[]): Promise<void> {
  const { list } = diary;
  diary.on('2026-08-14');
  const content = { observedOn: diary.today, placeId: ground.school.bed, lines };
  for (const again of [false, true]) {
    const answer = await diary.ask('POST', `requests/${id}/despatch`, content);
    diary.compare(again ? 'sent once more' : 'the despatch', answer.statusCode, 200);
  }
  const families = lines.map(({ batchId, label }) => `${label} ${list.in(batchId)[0]?.donor ?? ''}`);
  for (const { batchId, toBatchId, n } of lines) list.split(batchId, toBatchId, n, ground.school.bed);
  const note = DespatchNote.parse(await diary.get(`requests/${id}/despatch`, diary.volunteer(5)));
  diary.compare('the note', note.lines.map(({ toBatch, donorTree }) => `${toBatch?.label ?? ''} ${donorTree?.id ?? ''}`).sort(), families.sort());
  diary.compare('its sums', { plants: note.plants, trees: note.donorTrees, to: note.to }, { plants: WANTED, trees: WANTED, to: 'Thornber School' });
  diary.compare('the request has gone', PlantRequest.parse(await diary.get(`requests/${id}`)).state, 'gone');
}

/** Somebody of the school counts what came, each by each: one has dried on the way. */
async function countedAtSchool(diary: Diary, ground: Ground, lines: readonly Line[]): Promise<void> {
  diary.on('2026-08-20');
  const teacher = await member(diary.api, 'partner', 'harrowdale', { partnerId: ground.school.id });
  const entries = lines.map(({ toBatchId: batchId, n }, at) => diary.entry({ kind: 'counted', batchId, alive: at === 0 ? 0 : n, look: 'look', dead: at === 0 ? [{ n, cause: 'dry', certainty: 'seen' }] : [] }));
  await diary.send(teacher, entries, { door: 'outbox' });
  diary.list.end(lines[0]?.toBatchId ?? '', 1, 'died dry');
}

/** Back in the house they stand apart, and are held the next morning; nobody plants them. */
async function backFromSchool(diary: Diary, ground: Ground, back: readonly string[]): Promise<void> {
  diary.on('2026-08-28');
  await diary.write(back.map((batchId) => ({ kind: 'moved', batchId, placeId: ground.quarantine })));
  diary.on('2026-08-29');
  await diary.write([{ kind: 'held', batchIds: back, reason: 'stood beside bought plants' }]);
  for (const batch of back) {
    diary.list.move(batch, ground.quarantine);
    diary.list.hold(batch, true);
  }
  const planted = diary.entry({ kind: 'planted', batchId: back[0], toBatchId: newId(), n: 1, placeId: ground.plots[0] });
  await diary.send(diary.coordinator, [planted], { door: 'desk' }, ['refused']);
}
