// Who enters which route. The routes are read out of the running application; what
// each caller may do is said here a second time, apart from the rules beside the
// routes, so that a rule that is too wide is found. A new route that is anything but
// "all members read it, the desk changes it" must be put into one of the lists below.
import { expect, test } from 'vitest';
import { KEY_SCOPES, PARTNER_SCOPES } from '@sprigline/contract';
import { BASE_URL, testApi } from '../../../../test/support/api.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';
import { keyOf } from '../../../../test/support/keys.ts';
import { nameOf, type Route, routesOf } from '../../../../test/support/routes.ts';

const OPEN = ['GET /openapi.json', 'GET /docs', 'POST /setup', 'GET /setup/:token', 'GET /invitations/:token', 'POST /invitations/:token/account', 'GET /reset-links/:token', 'POST /reset-links/:token', 'GET /shared-plans/:token'];
const WITH_AN_ACCOUNT = ['GET /me', 'POST /programmes', 'POST /invitations/:token/acceptance'];
const OWNERS_ONLY = ['PATCH /programmes/:programme', 'GET /programmes/:programme/audit'];
const VOLUNTEERS_DO_NOT_READ = ['people/:id', 'invitations', 'imports', 'imports/:id', 'imports/:id/dry-run', 'review', 'review/groups', 'news', 'news/entries', 'keys', 'reports/handover', 'reports/handover.csv', 'plans/:id/shares'].map((path) => `GET /programmes/:programme/${path}`);
const VOLUNTEERS_WRITE = [
  'POST entries', 'POST entries/preview', 'POST donor-trees', 'POST donor-trees/:id/sightings', 'PUT donor-trees/:id/sealed-place', 'POST trips', 'POST trips/:id/bundles', 'POST workdays', 'PUT workdays/:id',
  'POST work-lists', 'POST work-lists/:id/typed',
  'POST climate',
  'POST labels', 'POST labels/missing', 'POST label-rolls',
  'PUT photos/:id', 'PUT photos/:id/frame',
  'PUT devices/:id',
  // Only of what was asked of them.
  'POST questions/:id/answer',
  // Only themselves.
  'DELETE people/:id',
].map((name) => name.replace(' ', ' /programmes/:programme/'));
/** They are shown what is theirs; what they may write is looked at entry by entry. */
const PARTNERS_TOO = ['GET /programmes/:programme', ...[
  'GET batches', 'GET batches/:id', 'GET labels/:code', 'GET donor-trees/:id/descent', 'GET donor-trees', 'GET donor-trees/:id', 'GET stands', 'GET stands/:id', 'GET sites',
  'GET sites/:id', 'GET taxa', 'GET taxa/:id', 'GET readings/funnels', 'GET readings/funnels.csv', 'GET readings/diversity', 'GET readings/diversity.csv',
  'GET readings/choices', 'GET readings/comparison', 'GET readings/comparison.csv', 'GET changes', 'POST entries', 'POST entries/preview',
].map((name) => name.replace(' ', ' /programmes/:programme/'))];
const PARTNERS_ONLY = ['GET /programmes/:programme/ours'];
/** Nouns that keys open, written here a second time; whatever else there is, is closed to them. */
const OPEN_TO_KEYS = ['', 'batches', 'labels', 'donor-trees', 'stands', 'sites', 'places', 'taxa', 'recipes', 'trips', 'workdays', 'readings', 'entries', 'changes'];

const api = await testApi();
const ROUTES = routesOf(api);

/** And those that they write. */
const WRITTEN_BY_KEYS = ['donor-trees', 'trips', 'workdays', 'entries'];

const outside = await member(api, 'owner', 'winterbeck');
const gone = await member(api, 'owner');
const endedPartner = newId();
await asOwner(api, (sql) => sql.query(`INSERT INTO partner (programme_id, id, name, since) VALUES ($1, $2, 'Winterbeck Agency', '2024-01-01')`, [gone.programmeId, endedPartner]));
const partnerGone = await member(api, 'partner');
const CALLERS: Readonly<Record<string, Record<string, string>>> = {
  nobody: { origin: BASE_URL },
  volunteer: (await member(api, 'volunteer')).headers,
  coordinator: (await member(api, 'coordinator')).headers,
  owner: (await member(api, 'owner')).headers,
  partner: (await member(api, 'partner')).headers,
  'owner of another programme': outside.headers,
  'key of the programme that reads all it can': await keyOf(api, { scopes: KEY_SCOPES.filter((scope) => scope.endsWith(':read')) }),
  'key of the programme that reads batches': await keyOf(api, { scopes: ['batches:read'] }),
  'key of the programme with every scope': await keyOf(api, { scopes: [...KEY_SCOPES] }),
  'key of a partner': await keyOf(api, { ofPartner: true, scopes: [...PARTNER_SCOPES] }),
  'key of another programme': await keyOf(api, { programme: 'winterbeck', scopes: [...KEY_SCOPES] }),
  'key that was revoked': await keyOf(api, { isRevoked: true, scopes: [...KEY_SCOPES] }),
  'owner who was removed': gone.headers,
  'partner who was removed': partnerGone.headers,
  'partner whose time is over': (await member(api, 'partner', 'harrowdale', { partnerId: endedPartner })).headers,
  'key of a partner whose time is over': await keyOf(api, { ofPartner: endedPartner, scopes: [...PARTNER_SCOPES] }),
};
await asOwner(api, async (sql) => {
  await sql.query('UPDATE person SET left_at = now() WHERE id = ANY ($1)', [[gone.personId, partnerGone.personId]]);
  await sql.query(`UPDATE partner SET until = '2025-12-31' WHERE id = $1`, [endedPartner]);
});

function mayEnter(caller: string, route: Route): boolean {
  const name = nameOf(route);
  if (OPEN.includes(name)) return true;
  if (WITH_AN_ACCOUNT.includes(name)) return caller !== 'nobody' && !caller.startsWith('key');
  switch (caller) {
    case 'owner':
      return !PARTNERS_ONLY.includes(name);
    case 'coordinator':
      return ![...OWNERS_ONLY, ...PARTNERS_ONLY].includes(name);
    case 'key of the programme that reads all it can':
      return route.method === 'GET' && mayEnter('volunteer', route) && OPEN_TO_KEYS.includes(nounOf(route));
    case 'key of the programme that reads batches':
      return route.method === 'GET' && ['', 'batches'].includes(nounOf(route));
    case 'key of the programme with every scope':
      return mayEnter('volunteer', route) && (route.method === 'GET' ? OPEN_TO_KEYS : WRITTEN_BY_KEYS).includes(nounOf(route));
    case 'key of a partner':
      return mayEnter('partner', route) && OPEN_TO_KEYS.includes(nounOf(route));
    case 'volunteer':
      return route.method === 'GET' ? ![...OWNERS_ONLY, ...PARTNERS_ONLY, ...VOLUNTEERS_DO_NOT_READ].includes(name) : VOLUNTEERS_WRITE.includes(name);
    case 'partner':
      return [...PARTNERS_TOO, ...PARTNERS_ONLY].includes(name);
    default:
      return false;
  }
}

const nounOf = ({ path }: Route): string => path.split('/')[3] ?? '';

const SHUT_OUT = new Set(['http/sign-in-first', 'programme/unknown', 'key/unknown', 'key/closed', 'key/not-here', 'key/scope-needed'].map((code) => `/problems/${code}`));

async function enters(caller: string, { method, path }: Route): Promise<boolean> {
  const url = `/api/v1${path.replace(':programme', 'harrowdale').replaceAll(/:\w+/g, newId)}`;
  const headers = { ...CALLERS[caller], 'if-match': '"seen"' };
  const answer = await api.app.inject({ method, url, headers, ...(method === 'GET' || method === 'DELETE' ? {} : { payload: {} }) });
  if (answer.statusCode < 400) return true;
  const { type, detail } = answer.json() as { type: string; detail?: string };
  const isShown = type === '/problems/http/not-allowed' && detail === 'your role in this programme does not allow that';
  return !isShown && !SHUT_OUT.has(type);
}

test('every route says who may use it', () => {
  expect(ROUTES.length).toBeGreaterThan(60);
  expect(ROUTES.filter(({ rule }) => rule === undefined).map(nameOf)).toEqual([]);
});

test('the lists name routes that are there', () => {
  const names = ROUTES.map(nameOf);
  const listed = [...OPEN, ...WITH_AN_ACCOUNT, ...OWNERS_ONLY, ...VOLUNTEERS_WRITE, ...PARTNERS_TOO, ...PARTNERS_ONLY];
  expect(listed.filter((name) => !names.includes(name))).toEqual([]);
});

test.each(Object.keys(CALLERS))('%s enters where they may, and nowhere else', async (caller) => {
  const surprises: string[] = [];
  for (const route of ROUTES) {
    if ((await enters(caller, route)) !== mayEnter(caller, route)) surprises.push(`${mayEnter(caller, route) ? 'shut out of' : 'let into'} ${nameOf(route)}`);
  }
  expect(surprises).toEqual([]);
});
