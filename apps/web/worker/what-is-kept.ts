interface Kept {
  readonly origin: string;
  readonly shell: string;
  readonly assets: readonly string[];
}

/** Under which address a request is answered from what the phone keeps; nothing: it goes to the network. */
export function keptFor({ origin, pathname }: URL, method: string, kept: Kept): string | undefined {
  if (method !== 'GET' || origin !== kept.origin) return undefined;
  if (pathname === kept.shell) return kept.shell;
  return kept.assets.includes(pathname) ? pathname : undefined;
}

/**
 * Where a page that cannot be had without a signal leads: a round to the same round, a printed list, by its code,
 * to a walk along its lines, anything else to what is on the phone.
 */
export function fieldFallback({ origin, pathname }: URL, shell: string): string {
  const [, programme, noun, id] = /^\/programmes\/([^/]+)\/(places|work-lists)\/([^/]+)(?:\/(?:round|type))?$/.exec(pathname) ?? [];
  const isPage = noun === 'places' && !pathname.endsWith('/round');
  return `${origin}${shell}${programme && id !== 'new' && !isPage ? `#/${programme}/${noun === 'places' ? 'round' : 'list'}/${id}` : ''}`;
}
