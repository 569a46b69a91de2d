/** Where one is in what works without a signal. It stands behind the # of the address, so that one page of the browser's own holds all of it. */
export type FieldRoute =
  | { readonly screen: 'home'; readonly programme?: string | undefined }
  | { readonly screen: 'outbox' }
  | { readonly screen: 'pack'; readonly programme: string }
  /** To one tree. */
  | { readonly screen: 'trip'; readonly programme: string; readonly id?: string | undefined }
  /** With a label that the cuttings are to get. */
  | { readonly screen: 'stick'; readonly programme: string; readonly id?: string | undefined }
  /** From a walk. */
  | { readonly screen: 'scan'; readonly programme: string; readonly id?: string | undefined }
  /** With the batch to begin with. */
  | { readonly screen: 'round' | 'list'; readonly programme: string; readonly id: string; readonly batchId?: string | undefined }
  | { readonly screen: 'note'; readonly programme: string; readonly id: string }
  /** What a code is on, `id`; and the walk that one came from. */
  | { readonly screen: 'claim'; readonly programme: string; readonly id: string; readonly walkId?: string | undefined }
  /** With a label that its plants are to get. */
  | { readonly screen: 'batch'; readonly programme: string; readonly id: string; readonly batchId: string; readonly label?: string | undefined };

/** @param hash as the browser tells it; what leads nowhere leads home */
export function routeIn(hash: string): FieldRoute {
  const [programme, screen, id, more, label] = hash.replace(/^#\/?/, '').split('/').map(decoded);
  if (programme === 'outbox') return { screen: 'outbox' };
  if (!programme) return { screen: 'home' };
  if (screen === 'pack') return { screen, programme };
  if (screen === 'trip' || screen === 'stick' || screen === 'scan') return { screen, programme, id };
  if (screen === 'note' && id) return { screen, programme, id };
  if ((screen === 'round' || screen === 'list') && id) return { screen, programme, id, batchId: more };
  if (screen === 'claim' && id) return { screen, programme, id, walkId: more };
  if (screen === 'batch' && id && more) return { screen, programme, id, batchId: more, label };
  return { screen: 'home', programme };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
