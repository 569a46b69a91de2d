/** Registers what lets the app open without a signal. In development nothing is registered: what one changes is to be seen at once. */
export async function startWorker(): Promise<void> {
  if (process.env.NODE_ENV === 'development' || !('serviceWorker' in navigator)) return;
  try {
    await navigator.serviceWorker.register('/sw.js', { scope: '/', updateViaCache: 'none' });
    // Here labels are scanned without a signal.
    if (location.pathname === '/field') (await navigator.serviceWorker.ready).active?.postMessage('keep-reader');
  } catch {
    // Switched off, or a private window: with a signal everything works all the same.
  }
}
