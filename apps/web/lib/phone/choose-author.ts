import { WHO } from './device.ts';
import { announce } from './news.ts';
import type { Author } from './outbox-item.ts';
import type { Store } from './store.ts';

/** @param author nothing: whoever is signed in */
export async function chooseAuthor(store: Store, programme: string, author: Author | undefined): Promise<void> {
  if (author) await store.put('settings', author, `${WHO}${programme}`);
  else await store.delete('settings', `${WHO}${programme}`);
  announce();
}
