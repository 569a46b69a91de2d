// Served instead of the worker while OFFLINE=off: takes it back from every browser that has one. What was logged lies in
// IndexedDB and is not touched: the page sends it as before.
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => {
  const leave = async () => {
    const names = await caches.keys();
    await Promise.all(names.filter((name) => name.startsWith('sprigline-')).map((name) => caches.delete(name)));
    await self.registration.unregister();
  };
  event.waitUntil(leave());
});
