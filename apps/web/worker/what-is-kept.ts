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

/** Where a page that cannot be had without a signal leads: a round to the same round, anything else to what is on the phone. */
export function fieldFallback({ origin, pathname }: URL, shell: string): string {
  const [, programme, placeId] = /^\/programmes\/([^/]+)\/places\/([^/]+)\/round$/.exec(pathname) ?? [];
  return `${origin}${shell}${programme ? `#/${programme}/round/${placeId}` : ''}`;
}
