/** What a person can do about it, by the code that the network or PostgreSQL gives. */
const WORDS = /** @type {Readonly<Record<string, string>>} */ ({
  ECONNREFUSED: 'Nothing answers there. Is PostgreSQL running, and are host and port right in the DATABASE_… settings?',
  ENOTFOUND: 'There is no such host. Look at the host in the DATABASE_… settings.',
  ETIMEDOUT: 'Nothing answers there. Is a firewall between this machine and the database?',
  '28P01': 'Look at the name and the password in the DATABASE_… settings. On a server that has never held Sprigline, set DATABASE_SUPERUSER_URL for one start.',
  28000: 'Look at the name in the DATABASE_… settings, and at what the server’s pg_hba.conf allows.',
  '3D000': 'Set DATABASE_SUPERUSER_URL for one start to have it made, or look at the name after the last / in the DATABASE_… settings.',
});

/**
 * @param {unknown} error
 * @returns {unknown} with words for a person when it is about reaching the database; else as it came
 */
export function withDatabaseWords(error) {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const words = WORDS[code];
  if (words === undefined || !(error instanceof Error)) return error;
  // The message names host, port or login, and never a password.
  return new Error(`The database cannot be used: ${error.message}\n${words}`, { cause: error });
}
