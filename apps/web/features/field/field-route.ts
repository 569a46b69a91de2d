/** Where one is in what works without a signal. It stands behind the # of the address, so that one page of the browser's own holds all of it. */
export type FieldRoute =
  | { readonly screen: 'home'; readonly programme?: string | undefined }
  | { readonly screen: 'outbox' }
  | { readonly screen: 'pack'; readonly programme: string }
  | { readonly screen: 'trip'; readonly programme: string }
  | { readonly screen: 'round' | 'list'; readonly programme: string; readonly id: string };

/** @param hash as the browser tells it; what leads nowhere leads home */
export function routeIn(hash: string): FieldRoute {
  const [programme, screen, id] = hash.replace(/^#\/?/, '').split('/').map(decoded);
  if (programme === 'outbox') return { screen: 'outbox' };
  if (!programme) return { screen: 'home' };
  if (screen === 'pack') return { screen: 'pack', programme };
  if (screen === 'trip') return { screen: 'trip', programme };
  if ((screen === 'round' || screen === 'list') && id) return { screen, programme, id };
  return { screen: 'home', programme };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
