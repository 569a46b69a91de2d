import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { v7 as newId } from 'uuid';
import { linkHash, linkTo } from '../http/link.ts';

interface Install {
  readonly databaseUrls: { readonly keeper: string };
  readonly baseUrl: string;
}

/**
 * The link that sets an empty install up. Each call makes a new one, and the one before opens nothing any more.
 *
 * @returns nothing when a programme is there
 */
export async function makeSetupLink({ databaseUrls, baseUrl }: Install): Promise<string | undefined> {
  const token = randomBytes(32).toString('base64url');
  const isMade = await answered(databaseUrls.keeper, 'SELECT offer_setup_link($1) AS yes', [linkHash(token)]);
  return isMade ? linkTo(baseUrl, 'set-up', token) : undefined;
}

/**
 * A link that lets somebody choose a new password, made by whoever runs the machine:
 * the way back in for an owner whom nobody else can let in. Opens for a day.
 *
 * @returns nothing when no account that works anywhere has this e-mail
 */
export async function makeResetLink({ databaseUrls, baseUrl }: Install, email: string): Promise<string | undefined> {
  const token = randomBytes(32).toString('base64url');
  const isMade = await answered(databaseUrls.keeper, 'SELECT offer_reset_link($1, $2, $3) AS yes', [email.trim().toLowerCase(), newId(), linkHash(token)]);
  return isMade ? linkTo(baseUrl, 'reset', token) : undefined;
}

async function answered(keeper: string, text: string, values: unknown[]): Promise<boolean> {
  const client = new pg.Client({ connectionString: keeper });
  await client.connect();
  try {
    const { rows } = await client.query<{ yes: boolean }>(text, values);
    return rows[0]?.yes ?? false;
  } finally {
    await client.end();
  }
}
