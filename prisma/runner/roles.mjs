// The roles by function, and the logins that fill them.
import pg from 'pg';

/**
 * @typedef {'owner' | 'app' | 'auth' | 'keeper'} RoleUse
 * @typedef {{ name: string, password: string }} Login
 * @typedef {Readonly<Record<RoleUse, Login>>} RoleLogins
 */

/** Policies and grants name these; nobody signs in as one of them. */
export const GROUP_ROLES = /** @type {const} */ ({
  owner: 'sprigline_owner',
  app: 'sprigline_app',
  auth: 'sprigline_auth',
  keeper: 'sprigline_keeper',
});

const USES = /** @type {const} */ (['owner', 'app', 'auth', 'keeper']);

/**
 * Makes the roles, the logins and the database where they are missing, and
 * brings the logins' rights and passwords to what they must be.
 *
 * @param {object} options
 * @param {string} options.url connection string of a superuser
 * @param {string} options.database name of the database to make
 * @param {RoleLogins} options.logins
 */
export async function bootstrapRoles({ url, database, logins }) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    for (const statement of rolesSql(logins)) await client.query(statement);
    await ensureDatabase(client, { database, owner: logins.owner.name });
  } finally {
    await client.end();
  }
}

/**
 * The same as text, for servers where somebody else is the superuser.
 *
 * Membership passes on grants but never BYPASSRLS, so the keeper's login has
 * that itself; the app's login is denied it by name, whatever it was before.
 *
 * @param {RoleLogins} logins
 * @returns {string[]} statements; running them again changes nothing
 */
export function rolesSql(logins) {
  const groups = USES.map((use) => createUnlessThere(GROUP_ROLES[use]));
  const members = USES.flatMap((use) => {
    const { name, password } = logins[use];
    const bypass = use === 'keeper' ? 'BYPASSRLS' : 'NOBYPASSRLS';
    const login = pg.escapeIdentifier(name);
    return [
      createUnlessThere(name),
      `ALTER ROLE ${login} LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION ${bypass} PASSWORD ${pg.escapeLiteral(password)}`,
      `GRANT ${GROUP_ROLES[use]} TO ${login}`,
    ];
  });
  return [...groups, ...members];
}

/**
 * Who may connect to a database is not copied with a template, so this is said for every one.
 *
 * @param {string} database
 * @returns {string[]}
 */
export function databaseGrants(database) {
  const name = pg.escapeIdentifier(database);
  return [
    `REVOKE ALL ON DATABASE ${name} FROM PUBLIC`,
    `GRANT CONNECT ON DATABASE ${name} TO ${USES.map((use) => GROUP_ROLES[use]).join(', ')}`,
    `GRANT TEMPORARY ON DATABASE ${name} TO ${GROUP_ROLES.app}`,
  ];
}

/**
 * Two starts at once may both find the role missing; the second one's error says it is there.
 * @param {string} name
 */
function createUnlessThere(name) {
  return `DO $$ BEGIN CREATE ROLE ${pg.escapeIdentifier(name)}; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$`;
}

/**
 * @param {pg.Client} client
 * @param {{ database: string, owner: string }} options
 */
async function ensureDatabase(client, { database, owner }) {
  const { rowCount } = await client.query('SELECT 1 FROM pg_database WHERE datname = $1', [database]);
  if (rowCount === 0) {
    await client.query(`CREATE DATABASE ${pg.escapeIdentifier(database)} OWNER ${pg.escapeIdentifier(owner)}`);
  }
  for (const statement of databaseGrants(database)) await client.query(statement);
}
