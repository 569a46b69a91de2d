import type { Metadata } from 'next';
import type { Messages } from 'next-intl';
import { getMessages } from 'next-intl/server';

/** The title of a page out of the message files: `export const generateMetadata = titled((words) => words.stands.title);` */
export function titled(say: (words: Messages) => string): () => Promise<Metadata> {
  return async () => ({ title: say(await getMessages()) });
}
