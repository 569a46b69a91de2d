import { KEY_SCOPES, type KeyScope } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';

const SCOPES: ReadonlySet<string> = new Set(KEY_SCOPES);
const READS = new Set(['GET', 'HEAD']);

/**
 * The scope that a route asks of a key: the noun in its path, and whether it reads or writes.
 * A noun that is not on the list of scopes is closed to every key, so a new route is, too.
 *
 * @param path below the API's root, such as `/programmes/:programme/batches/:id`
 * @returns `any` for the programme itself, `none` where no key is let in
 */
export function scopeOf(method: string, path: string): KeyScope | 'any' | 'none' {
  const [, programmes, , noun] = path.split('/');
  if (programmes !== 'programmes') return 'none';
  if (noun === undefined) return READS.has(method) ? 'any' : 'none';
  const scope = `${noun}:${READS.has(method) ? 'read' : 'write'}`;
  return SCOPES.has(scope) ? (scope as KeyScope) : 'none';
}

/** @throws DomainError `key/not-here`, `key/scope-needed` with the scope that is missing */
export function refuseWithoutScope(scopes: readonly string[], method: string, path: string): void {
  const scope = scopeOf(method, path);
  if (scope === 'any') return;
  if (scope === 'none') throw new DomainError('key/not-here', 'sign in and do it there');
  if (!scopes.includes(scope)) throw new DomainError('key/scope-needed', `it takes a key with the scope ${scope}`, { scope });
}
