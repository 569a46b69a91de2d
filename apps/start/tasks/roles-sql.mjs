import { databaseGrants, rolesSql } from '@sprigline/prisma/runner';

const FILL_IN = 'choose-a-password';

/** @param {(words: string) => void} say */
export function printRoles(say) {
  const login = (/** @type {string} */ use) => ({ name: `sprigline_${use}_login`, password: FILL_IN });
  const logins = { owner: login('owner'), app: login('app'), auth: login('auth'), keeper: login('keeper') };

  say(`-- Put four passwords in place of '${FILL_IN}', then run this as a superuser.`);
  for (const statement of rolesSql(logins)) say(`${statement};`);
  say(`CREATE DATABASE sprigline OWNER ${logins.owner.name};`);
  for (const statement of databaseGrants('sprigline')) say(`${statement};`);
}
