/**
 * Tells of a newer worker that waits for this one to go.
 *
 * @returns how to stop
 */
export function newerWorker(tell: (worker: ServiceWorker) => void): () => void {
  let isOver = false;
  const listen = (registration: ServiceWorkerRegistration): void => {
    // Without a worker at work the first one is no newer one.
    const look = (): void => {
      if (!isOver && registration.waiting && registration.active) tell(registration.waiting);
    };
    look();
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));
  };
  if ('serviceWorker' in navigator) void navigator.serviceWorker.getRegistration().then((found) => found && listen(found), () => undefined);
  return () => void (isOver = true);
}

/** Changes to it once nothing is being sent, and opens this page anew. Other tabs go on as they are until they are opened anew. */
export async function changeTo(worker: ServiceWorker): Promise<void> {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true });
  const change = (): Promise<void> => Promise.resolve(worker.postMessage('use-it-now'));
  await (navigator.locks ? navigator.locks.request('sprigline-sender', change) : change());
}
