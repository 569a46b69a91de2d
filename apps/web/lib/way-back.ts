/**
 * Where to go after signing in. Only addresses of our own pages: `//elsewhere` and
 * `https://elsewhere` would lead a person who trusts us to another site.
 */
export function wayBack(asked: string | undefined): string {
  return asked !== undefined && /^\/(?![/\\])/.test(asked) ? asked : '/';
}
