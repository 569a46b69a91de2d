/** Where one is in what works without a signal. It stands behind the # of the address, so that one page of the browser's own holds all of it. */
export type FieldRoute =
  | { readonly screen: 'home'; readonly programme?: string | undefined }
  | { readonly screen: 'outbox' }
  | { readonly screen: 'pack'; readonly programme: string }
  | { readonly screen: 'trip'; readonly programme: string }
  | { readonly screen: 'stick'; readonly programme: string }
  | { readonly screen: 'round' | 'list' | 'note'; readonly programme: string; readonly id: string }
  | { readonly screen: 'batch'; readonly programme: string; readonly id: string; readonly batchId: string };

/** @param hash as the browser tells it; what leads nowhere leads home */
export function routeIn(hash: string): FieldRoute {
  const [programme, screen, id, batchId] = hash.replace(/^#\/?/, '').split('/').map(decoded);
  if (programme === 'outbox') return { screen: 'outbox' };
  if (!programme) return { screen: 'home' };
  if (screen === 'pack') return { screen, programme };
  if (screen === 'trip' || screen === 'stick') return { screen, programme };
  if ((screen === 'round' || screen === 'list' || screen === 'note') && id) return { screen, programme, id };
  if (screen === 'batch' && id && batchId) return { screen, programme, id, batchId };
  return { screen: 'home', programme };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
