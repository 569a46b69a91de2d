import pg from 'pg';

const WHAT_IS_WRONG = `
  SELECT 'it is, or may become, a superuser or a role with BYPASSRLS: ' || string_agg(rolname, ', ' ORDER BY rolname) AS fault
  FROM pg_roles WHERE (rolsuper OR rolbypassrls) AND pg_has_role(current_user, oid, 'MEMBER')
  UNION ALL
  SELECT 'it is a member of sprigline_owner, who sees every row'
  FROM pg_roles WHERE rolname = 'sprigline_owner' AND pg_has_role(current_user, oid, 'MEMBER')
  UNION ALL
  SELECT 'it owns ' || string_agg(oid::regclass::text, ', ' ORDER BY oid)
  FROM pg_class WHERE relnamespace IN ('public'::regnamespace, to_regnamespace('auth')) AND relkind IN ('r', 'v', 'm') AND pg_has_role(current_user, relowner, 'MEMBER')
  UNION ALL
  SELECT 'row-level security is not forced on ' || string_agg(c.oid::regclass::text, ', ' ORDER BY c.oid)
  FROM pg_class c
  WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND NOT (c.relrowsecurity AND c.relforcerowsecurity)
    AND (c.relname = 'programme' OR EXISTS (SELECT FROM pg_attribute a WHERE a.attrelid = c.oid AND a.attname = 'programme_id' AND NOT a.attisdropped))`;

/**
 * The policies are what keeps programmes apart, so the service does not start with a
 * login that could step around them.
 *
 * @param url the app's connection string
 * @throws Error that names every fault and says what to do; it never quotes the string, which holds a password
 */
export async function refuseUnsafeLogin(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const { rows: [who] } = await client.query<{ name: string }>('SELECT current_user AS name');
    const { rows } = await client.query<{ fault: string | null }>(WHAT_IS_WRONG);
    const faults = rows.flatMap(({ fault }) => (fault === null ? [] : [fault]));
    if (faults.length === 0) return;
    throw new Error(
      `The app's login "${who?.name ?? '?'}" could see rows of every programme, so nothing was started:\n` +
        faults.map((fault) => `  - ${fault}\n`).join('') +
        'Give the app a login of its own that is a member of sprigline_app only. `npm start -- --roles-sql` prints how to make it.',
    );
  } finally {
    await client.end();
  }
}
