import { createHash, createHmac } from 'node:crypto';

/** Pages that a link opens. */
export type LinkPage = 'set-up' | 'invitation' | 'reset' | 'shared-plan';

/**
 * The secret end of a link, 256 bits that nobody can tell without the install's
 * secret. Made out of the id of what it opens, so that a request sent twice is
 * answered the same although only the hash is kept.
 */
export const linkToken = (secret: string, page: LinkPage, programmeId: string, id: string): string =>
  createHmac('sha256', secret).update(`link ${page} ${programmeId} ${id}`).digest('base64url');

/** What the database keeps of a token: it is long enough to need no stretching (OWASP ASVS 5.0, 6.5.2). */
export const linkHash = (token: string): Buffer => createHash('sha256').update(token).digest();

export const linkTo = (baseUrl: string, page: LinkPage, token: string): string => `${baseUrl.replace(/\/$/, '')}/${page}/${token}`;
