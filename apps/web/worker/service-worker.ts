import { askFrom } from '../lib/phone/ask.ts';
import { announce } from '../lib/phone/news.ts';
import { sendAll } from '../lib/phone/sender.ts';
import { theStore } from '../lib/phone/store.ts';
import { programmesHere, tellOfDevice } from '../lib/phone/telling.ts';
import { readsCodesItself } from '../ui/scanner/reads-codes-itself.ts';
import { fieldFallback, keptFor } from './what-is-kept.ts';

declare const self: ServiceWorkerGlobalScope;
/** Background Sync, which only some browsers know. */
interface SyncEvent extends ExtendableEvent {
  readonly tag: string;
}
/** Written in by the build. */
declare const BUILD: string;
declare const ASSETS: readonly string[];
/** Reads labels where the browser has no reader of its own: a megabyte, kept only there. */
declare const READER: string;

/** A cache a build: the page and its scripts always fit each other. */
const CACHE = `sprigline-${BUILD}`;
const SHELL = '/field';

/**
 * Keeps one page and its scripts, which are the same for everybody, and nothing else: no answer
 * of the API and no page about anybody ever lies in the cache.
 */
self.addEventListener('install', (event) => {
  event.waitUntil(
    caches.open(CACHE).then(async (cache) => {
      const shell = await fetch(SHELL, { cache: 'no-store', credentials: 'omit' });
      if (!shell.ok || shell.redirected) throw new Error(`the field page answered ${shell.status}`);
      await cache.addAll([...ASSETS]);
      await cache.put(SHELL, shell);
    }),
  );
});

// A newer worker waits until no page of the older build is open, or until somebody asks for it.
self.addEventListener('message', (event) => {
  if (event.data === 'use-it-now') void self.skipWaiting();
  // The page that works without a signal is open. Nothing waits for it; what fails is tried again the next time.
  if (event.data === 'keep-reader') event.waitUntil(keepReader().catch(() => undefined));
});

async function keepReader(): Promise<void> {
  const cache = await caches.open(CACHE);
  if (!(await readsCodesItself(self)) && !(await cache.match(READER))) await cache.add(READER);
}

self.addEventListener('activate', (event) => {
  const forgetOthers = async (): Promise<void> => {
    const names = await caches.keys();
    await Promise.all(names.filter((name) => name.startsWith('sprigline-') && name !== CACHE).map((name) => caches.delete(name)));
    await self.clients.claim();
  };
  event.waitUntil(forgetOthers());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const kept = keptFor(new URL(request.url), request.method, { origin: self.location.origin, shell: SHELL, assets: [...ASSETS, READER] });
  if (kept !== undefined) event.respondWith(caches.open(CACHE).then((cache) => cache.match(kept)).then((found) => found ?? fetch(request)));
  else if (request.mode === 'navigate') event.respondWith(fetch(request).catch(() => Response.redirect(fieldFallback(new URL(request.url), SHELL))));
});

// Only where the browser knows it: the page sends at every chance by itself.
self.addEventListener('sync', (event) => {
  const { tag } = event as SyncEvent;
  if (tag === 'outbox') (event as SyncEvent).waitUntil(sendInBackground());
});

async function sendInBackground(): Promise<void> {
  // A page that somebody looks at sends by itself, a little later, so that a slip can still be undone.
  const pages = await self.clients.matchAll({ type: 'window' });
  if (pages.some(({ visibilityState }) => visibilityState === 'visible')) return;
  const store = await theStore();
  const [ask, programmes] = [askFrom(store), await programmesHere(store)];
  const ending = await sendAll({ store, ask, now: Date.now, holdBackMs: 0 });
  announce();
  if (ending.why === 'done') await tellOfDevice(store, ask, programmes);
  // The browser tries again by itself if it is told that it failed.
  if (ending.why === 'unheard') throw new Error('not sent yet');
}
