import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { vi } from 'vitest';
import type { createTranslator as TranslatorOf } from 'use-intl/core';
import type { TestApi } from '../support/api.ts';
import { pdfText } from '../support/pdf-text.ts';

const PAGES = fileURLToPath(new URL('../../apps/web/app/programmes/[programme]', import.meta.url));

type Handler = (asked: Request, more: { params: Promise<Record<string, string>> }) => Promise<Response>;

export interface Paper {
  /** Whatever the web app makes a PDF of, by its place among the pages, such as `trace/pdf`. */
  readonly kinds: readonly string[];
  /** @returns the words on it; nothing where they may not have it */
  ask(kind: string, query: string, headers: Record<string, string>): Promise<string | undefined>;
  stop(): void;
}

/**
 * The web app's own makers of PDFs, asking this API. They run as they stand; only what the framework tells them is
 * told by hand: who asks, and the words of the language.
 *
 * @param known by the kind of paper, or by the noun before an id, what to put there
 */
export async function paperFrom(api: TestApi, known: Readonly<Record<string, string>>): Promise<Paper> {
  let asking: Record<string, string> = {};
  await tellTheFramework(() => asking);
  await api.app.listen(0, '127.0.0.1');
  process.env['API_URL'] = await api.app.getUrl();
  // The runner of the tests has a setting of that name, which is no address.
  const { BASE_URL } = process.env;
  process.env['BASE_URL'] = 'https://nursery.example';
  const files = readdirSync(PAGES, { recursive: true, encoding: 'utf8' }).filter((file) => /\/pdf\/route\.tsx?$/.test(file));
  return {
    kinds: files.map(kindOf).sort(),
    ask: async (kind, query, headers) => {
      asking = headers;
      const { GET } = (await import(`${PAGES}/${files.find((file) => kindOf(file) === kind) ?? ''}`)) as { GET: Handler };
      const id = known[kind] ?? known[kind.split('/')[0] ?? ''] ?? '';
      try {
        const answer = await GET(new Request(`http://localhost/programmes/harrowdale/${kind}?${query}`), { params: Promise.resolve({ programme: 'harrowdale', id }) });
        return pdfText(Buffer.from(await answer.arrayBuffer()));
      } catch (no) {
        if (no instanceof NotForYou) return undefined;
        throw no;
      }
    },
    stop: () => {
      FRAMEWORK.forEach((name) => vi.doUnmock(name));
      delete process.env['API_URL'];
      process.env['BASE_URL'] = BASE_URL;
    },
  };
}

const kindOf = (file: string): string => file.slice(0, file.lastIndexOf('/'));

/** What a page says instead of an answer. */
class NotForYou extends Error {}

const FRAMEWORK = ['server-only', 'next/headers', 'next/navigation', 'next-intl/server'] as const;

async function tellTheFramework(whoAsks: () => Record<string, string>): Promise<void> {
  const { createTranslator } = (await import('use-intl/core')) as { createTranslator: typeof TranslatorOf };
  const { messages } = (await import('../../apps/web/messages/en.ts')) as unknown as { messages: Record<string, never> };
  const no = (): never => {
    throw new NotForYou();
  };
  const told: Record<(typeof FRAMEWORK)[number], object> = {
    'server-only': {},
    'next/headers': { headers: () => Promise.resolve(new Headers(whoAsks())) },
    'next/navigation': { forbidden: no, notFound: no, redirect: no },
    'next-intl/server': {
      getMessages: () => Promise.resolve(messages),
      getTranslations: (namespace: never) => Promise.resolve(createTranslator({ locale: 'en', messages, namespace, timeZone: 'UTC' })),
    },
  };
  for (const name of FRAMEWORK) vi.doMock(name, () => told[name]);
}
