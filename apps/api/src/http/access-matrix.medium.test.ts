// Who enters which route. The routes are read out of the running application; what
// each caller may do is said here a second time, apart from the rules beside the
// routes, so that a rule that is too wide is found. A new route that is anything but
// "all members read it, the desk changes it" must be put into one of the lists below.
import { expect, test } from 'vitest';
import { BASE_URL, testApi } from '../../../../test/support/api.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';
import { nameOf, type Route, routesOf } from '../../../../test/support/routes.ts';

const OPEN = ['GET /openapi.json', 'POST /setup', 'GET /setup/:token', 'GET /invitations/:token', 'POST /invitations/:token/account', 'GET /reset-links/:token', 'POST /reset-links/:token'];
const WITH_AN_ACCOUNT = ['GET /me', 'POST /programmes', 'POST /invitations/:token/acceptance'];
const OWNERS_ONLY = ['PATCH /programmes/:programme', 'GET /programmes/:programme/audit'];
const VOLUNTEERS_DO_NOT_READ = ['people/:id', 'invitations', 'imports', 'imports/:id', 'imports/:id/dry-run', 'review', 'keys'].map((path) => `GET /programmes/:programme/${path}`);
const VOLUNTEERS_WRITE = [
  'POST entries', 'POST entries/preview', 'POST donor-trees', 'POST donor-trees/:id/sightings', 'POST trips', 'POST trips/:id/bundles', 'POST workdays', 'PUT workdays/:id',
  'POST work-lists', 'POST work-lists/:id/typed',
  // Only themselves.
  'DELETE people/:id',
].map((name) => name.replace(' ', ' /programmes/:programme/'));
/** Of batches they are shown those that are theirs. */
const PARTNERS_TOO = ['GET /programmes/:programme', 'GET /programmes/:programme/batches'];

const api = await testApi();
const ROUTES = routesOf(api);

const outside = await member(api, 'owner', 'winterbeck');
const gone = await member(api, 'owner');
const CALLERS = {
  nobody: { origin: BASE_URL },
  volunteer: (await member(api, 'volunteer')).headers,
  coordinator: (await member(api, 'coordinator')).headers,
  owner: (await member(api, 'owner')).headers,
  partner: (await member(api, 'partner')).headers,
  'owner of another programme': outside.headers,
  'owner who was removed': gone.headers,
};
type CallerName = keyof typeof CALLERS;
await asOwner(api, (sql) => sql.query('UPDATE person SET left_at = now() WHERE id = $1', [gone.personId]));

function mayEnter(caller: CallerName, route: Route): boolean {
  const name = nameOf(route);
  if (OPEN.includes(name)) return true;
  if (WITH_AN_ACCOUNT.includes(name)) return caller !== 'nobody';
  switch (caller) {
    case 'owner':
      return true;
    case 'coordinator':
      return !OWNERS_ONLY.includes(name);
    case 'volunteer':
      return route.method === 'GET' ? ![...OWNERS_ONLY, ...VOLUNTEERS_DO_NOT_READ].includes(name) : VOLUNTEERS_WRITE.includes(name);
    case 'partner':
      return PARTNERS_TOO.includes(name);
    default:
      return false;
  }
}

async function enters(caller: CallerName, { method, path }: Route): Promise<boolean> {
  const url = `/api/v1${path.replace(':programme', 'harrowdale').replaceAll(/:\w+/g, newId)}`;
  const headers = { ...CALLERS[caller], 'if-match': '"seen"' };
  const answer = await api.app.inject({ method, url, headers, ...(method === 'GET' || method === 'DELETE' ? {} : { payload: {} }) });
  if (answer.statusCode < 400) return true;
  const { type, detail } = answer.json() as { type: string; detail?: string };
  const isShown = type === '/problems/http/not-allowed' && detail === 'your role in this programme does not allow that';
  return !isShown && type !== '/problems/http/sign-in-first' && type !== '/problems/programme/unknown';
}

test('every route says who may use it', () => {
  expect(ROUTES.length).toBeGreaterThan(60);
  expect(ROUTES.filter(({ rule }) => rule === undefined).map(nameOf)).toEqual([]);
});

test('the lists name routes that are there', () => {
  const names = ROUTES.map(nameOf);
  const listed = [...OPEN, ...WITH_AN_ACCOUNT, ...OWNERS_ONLY, ...VOLUNTEERS_WRITE, ...PARTNERS_TOO];
  expect(listed.filter((name) => !names.includes(name))).toEqual([]);
});

test.each(Object.keys(CALLERS) as CallerName[])('%s enters where they may, and nowhere else', async (caller) => {
  const surprises: string[] = [];
  for (const route of ROUTES) {
    if ((await enters(caller, route)) !== mayEnter(caller, route)) surprises.push(`${mayEnter(caller, route) ? 'shut out of' : 'let into'} ${nameOf(route)}`);
  }
  expect(surprises).toEqual([]);
});
