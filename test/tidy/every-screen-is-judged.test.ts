import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ABOUT_ONE, IN_FIELD, OF_PERSON, OF_PROGRAMME } from '../e2e/screens/screens.ts';
import { ROOT } from './repository.ts';

const APP = join(ROOT, 'apps/web/app');
const PROGRAMME = '/programmes/[programme]';

/** Screens that no list of the demo leads to, and why, or who goes there instead. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  '/': 'leads to a programme, or to the door',
  '/sign-in': 'every journey begins there',
  '/invitation/[token]': 'the owner who sets up sends one',
  '/set-up/[token]': 'the owner who sets up begins there',
  '/reset/[token]': 'the owner who sets up makes one',
  '/shared-plan/[token]': 'its address is told once; the plan within it is judged as a plan',
  '/l/[code]': 'leads on to what the label is on',
  '/programmes/[programme]/field': 'leads on to the field page',
  '/programmes/[programme]/places/[id]/round': 'leads on to the field page, where the volunteer walks',
  '/programmes/[programme]/import/[id]': 'the coordinator who imports a sheet goes there',
  '/programmes/[programme]/batches/[id]/sort': 'the team that sorts a tray goes there',
  '/programmes/[programme]/requests/[id]/note': 'the coordinator who fills a request goes there',
  '/programmes/[programme]/places/[id]/climate/[readingId]': 'the same form as that of a new one',
  '/programmes/[programme]/places/[id]/incidents/[entryId]': 'the same form as that of a new one',
  '/programmes/[programme]/places/[id]/regimes/[regimeId]': 'the same form as that of a new one',
};

/** Routes of the web app that have a page. */
const routes = readdirSync(APP, { recursive: true, encoding: 'utf8' })
  .filter((file) => /(^|\/)page\.tsx$/.test(file))
  .map((file) => `/${file.replace(/\/?page\.tsx$/, '')}`);

const judged = [
  ...[...OF_PROGRAMME, ...ABOUT_ONE.flatMap(([, route, behind = []]) => [route, ...behind.map((more) => `${route}${more}`)])].map((screen) => `${PROGRAMME}${screen}`),
  ...OF_PERSON, ...IN_FIELD,
].map((screen) => screen.replace(/[?#].*$/, ''));

/** Which page answers an address: one of just these words before one that takes whatever stands there. */
function routeOf(address: string): string | undefined {
  if (routes.includes(address)) return address;
  return routes.find((route) => new RegExp(`^${route.split('/').map((part) => (part.startsWith('[') ? '[^/]+' : part)).join('/')}$`).test(address));
}

const reached = new Set(judged.map(routeOf));

describe('every screen', () => {
  it('is judged by every-screen.spec.ts, or says which test goes there', () => {
    expect(routes.filter((route) => !reached.has(route) && !(route in ELSEWHERE))).toEqual([]);
  });

  it('stands in one list only', () => {
    expect(Object.keys(ELSEWHERE).filter((route) => reached.has(route) || !routes.includes(route))).toEqual([]);
  });
});
