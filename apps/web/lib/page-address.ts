/** Address of a page within a programme: `pageOf('harrowdale', 'stands', id)`. */
export function pageOf(programme: string, ...parts: readonly string[]): string {
  return `/programmes/${[programme, ...parts].map(encodeURIComponent).join('/')}`;
}
