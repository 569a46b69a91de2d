import { KEY_SCOPES, PARTNER_SCOPES } from '@sprigline/contract';
import { keyOf } from '../support/keys.ts';
import { member, newId } from '../support/people.ts';
import { photoOfAPhone } from '../support/pictures.ts';
import type { Ground } from './beginning.ts';
import type { Diary } from './diary.ts';
import type { Tray } from './winter.ts';

/** One real thing of each kind, by the noun before its id in a path, or by `?` and the parameter that names it. */
export async function oneOfEach(diary: Diary, ground: Ground, tray: Tray, tree: string, request: string): Promise<Readonly<Record<string, string>>> {
  const first = async (path: string, name = 'id'): Promise<string> => (await diary.get<Record<string, string>[]>(path))[0]?.[name] ?? '';
  const donor = tray.donor;
  const photo = await photoOf(diary, tree);
  const plan = await planOf(diary, ground, donor.standId);
  return {
    'batches': tree, 'donor-trees': donor.id, 'stands': donor.standId, 'taxa': ground.taxonId, 'places': ground.trays[0] ?? '', 'sites': ground.site, 'partners': ground.school.id,
    'stickings': tray.sticking, 'recipes': ground.recipeId, 'regimes': ground.regime, 'trips': ground.tripId, 'permissions': ground.permission, 'requests': request, 'labels': 'T01',
    'people': diary.volunteer(1).personId, 'work-lists': await first('work-lists'), 'workdays': await first('workdays'), 'incidents': await first('incidents', 'entryId'),
    'label-rolls': (await diary.make<{ id: string }>('label-rolls', { name: 'First roll', n: 3 })).id, 'photos': photo, 'plans': plan.id, 'shared-plans': plan.token,
    '?placeId': ground.bench, '?standId': donor.standId, '?taxonId': ground.taxonId, '?donorTreeId': donor.id, '?stickingId': tray.sticking, '?recipeId': ground.recipeId, '?batchId': tree, '?ids': tree, '?of': 'batches',
    '?tripId': ground.tripId, '?siteId': ground.site, '?partnerId': ground.school.id, '?permissionId': ground.permission, '?fillingId': ground.filling, '?mediumLot': 'LOT 7',
    '?from': '2025-10-01', '?until': '2027-09-01', '?asOf': '2026-05-02', '?on': '2026-10-04', '?day': '2026-03-21', '?season': '2025', '?limit': '20',
    '?label': donor.label, '?stage': 'planted', '?by': 'donor', '?what': 'vented', '?code': 'two-readings', '?assignedTo': diary.coordinator.personId, '?against': ground.recipeId, '?first': ground.recipeId, '?second': 'not tried yet', '?allowFor': 'ageClass', '?seed': '2', '?row': '1', '?foliage': 'juvenile', 'due?kind': 'round', 'due/places?kind': 'round', 'work-lists?kind': 'calling',
  };
}

/** A photo of the batch as a phone wrote it, with the way to a wild tree in what it tells of itself. */
async function photoOf(diary: Diary, batchId: string): Promise<string> {
  const id = newId();
  const answer = await diary.ask('PUT', `photos/${id}?batchId=${batchId}&takenOn=${diary.today}`, await photoOfAPhone(), diary.coordinator, { 'content-type': 'image/jpeg' });
  if (answer.statusCode !== 200) throw new Error(`the photo was answered ${answer.statusCode}: ${answer.body}`);
  return id;
}

/** A plan for the stand, and the secret end of a link to it. */
async function planOf(diary: Diary, ground: Ground, standId: string): Promise<{ readonly id: string; readonly token: string }> {
  const { id } = await diary.make('plans', { name: 'Next spring', season: 2028 });
  await diary.make(`plans/${id}/targets`, { standId, taxonId: ground.taxonId, siteId: ground.site, plants: 20, donors: 3 });
  const { link } = (await diary.ask('POST', `plans/${id}/shares`, { id: newId(), forName: 'Somebody who knows junipers' })).json<{ link: string }>();
  return { id, token: link.split('/').at(-1) ?? '' };
}

/** Somebody who may look, and may not see where a tree stands. */
export interface Looker {
  readonly who: string;
  /** What they send along. */
  readonly headers: Record<string, string>;
  /** What they ask about instead. */
  readonly own: Readonly<Record<string, string>>;
}

export async function peopleWithoutTheGrant(diary: Diary, ground: Ground): Promise<readonly Looker[]> {
  const { api, list } = diary;
  const inSchool = [...list.batches.values()].find(({ id, place }) => place === ground.school.bed && list.count(id) > 0)?.id ?? '';
  const person = async (partnerId?: string) => (await member(api, 'partner', 'harrowdale', partnerId === undefined ? {} : { partnerId })).headers;
  const ofSchool = { 'batches': inSchool, '?batchId': inSchool, '?placeId': ground.school.bed };
  return [
    { who: 'a volunteer', headers: diary.volunteer(1).headers, own: {} },
    { who: 'somebody of the school', headers: await person(ground.school.id), own: ofSchool },
    { who: 'somebody of the estate', headers: await person(ground.estate), own: {} },
    { who: 'somebody of another partner', headers: await person(), own: {} },
    { who: 'a key of the estate', headers: await keyOf(api, { scopes: PARTNER_SCOPES, ofPartner: ground.estate }), own: {} },
    { who: 'a key of the programme', headers: await keyOf(api, { scopes: KEY_SCOPES }), own: {} },
  ];
}
