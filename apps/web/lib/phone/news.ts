/** What changed in the outbox of this browser, for every tab of it. */
const CHANNEL = 'sprigline-outbox';
const own = new EventTarget();
let channel: BroadcastChannel | undefined;

function others(): BroadcastChannel | undefined {
  if (channel === undefined && typeof BroadcastChannel !== 'undefined') {
    channel = new BroadcastChannel(CHANNEL);
    channel.onmessage = () => void own.dispatchEvent(new Event('news'));
  }
  return channel;
}

/** Tells this tab and the others that something was kept, sent or taken back. */
export function announce(): void {
  own.dispatchEvent(new Event('news'));
  others()?.postMessage('news');
}

/** @returns how to stop listening */
export function onNews(listen: () => void): () => void {
  others();
  own.addEventListener('news', listen);
  return () => own.removeEventListener('news', listen);
}
