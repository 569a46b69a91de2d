import { DomainError } from '@sprigline/domain';
import { createHash } from 'node:crypto';
import type pg from 'pg';

/** So many wrong passwords in so many minutes, for one account from one address. */
const TRIES = 10;
const MINUTES = 15;

/** In the database, so that a restart forgets nothing and several servers count together. */
const COUNT = `
  INSERT INTO auth.wrong_try AS t (key_hash, tries, since) VALUES ($1, 1, now())
  ON CONFLICT (key_hash) DO UPDATE SET
    tries = CASE WHEN t.since < now() - $2 * interval '1 minute' THEN 1 ELSE t.tries + 1 END,
    since = CASE WHEN t.since < now() - $2 * interval '1 minute' THEN now() ELSE t.since END
  RETURNING tries, ceil(extract(epoch FROM since + $2 * interval '1 minute' - now()))::int AS seconds`;

/**
 * Counts before the password is looked at, so that many tries at once cannot all
 * slip under the limit; a right password clears the count.
 *
 * @param who account and address together: guessing at an account from one place
 *   never locks out its owner at another
 * @throws DomainError `sign-in/too-many-tries` with `retryAfterSeconds`
 */
export async function countTry(pool: pg.Pool, who: readonly string[]): Promise<void> {
  const { rows } = await pool.query<{ tries: number; seconds: number }>(COUNT, [keyOf(who), MINUTES]);
  const [{ tries, seconds } = { tries: 0, seconds: 0 }] = rows;
  if (tries > TRIES) {
    throw new DomainError('sign-in/too-many-tries', `wait ${Math.ceil(seconds / 60)} minutes, then try again; a reset link works at once`, {
      retryAfterSeconds: seconds,
    });
  }
}

export async function forgetTries(pool: pg.Pool, who: readonly string[]): Promise<void> {
  await pool.query(`DELETE FROM auth.wrong_try WHERE key_hash = $1 OR since < now() - interval '1 day'`, [keyOf(who)]);
}

const keyOf = (who: readonly string[]): Buffer => createHash('sha256').update(JSON.stringify(who)).digest();
