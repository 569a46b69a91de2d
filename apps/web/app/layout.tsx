import '@fontsource-variable/atkinson-hyperlegible-next/index.css';
import '@fontsource-variable/atkinson-hyperlegible-next/wght-italic.css';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import { NextIntlClientProvider } from 'next-intl';
import { getLocale, getMessages, getTranslations } from 'next-intl/server';
import { connection } from 'next/server';
import type { ReactNode } from 'react';

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations('shell');
  return { title: { default: t('name'), template: `%s – ${t('name')}` }, description: t('whatItIs'), icons: '/icon.svg' };
}

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f5f1e6' },
    { media: '(prefers-color-scheme: dark)', color: '#131916' },
  ],
};

export default async function RootLayout({ children }: { children: ReactNode }) {
  // Every page carries a nonce of its own, so none can be made ahead of its request.
  await connection();
  const [locale, messages, t] = await Promise.all([getLocale(), getMessages(), getTranslations('shell')]);

  return (
    <html lang={locale}>
      <body>
        <a href="#main" className="skip rounded bg-juniper px-4 py-3 text-on-juniper">
          {t('skip')}
        </a>
        {/* Only what fields and keypads say goes to the browser; all other words stay here. */}
        <NextIntlClientProvider messages={{ ui: messages.ui }}>{children}</NextIntlClientProvider>
      </body>
    </html>
  );
}
