import type { MetadataRoute } from 'next';
import { getTranslations } from 'next-intl/server';
import { fieldAddress } from '../lib/field-address.ts';

/** How the app stands on a home screen: it opens with what works without a signal. */
export default async function manifest(): Promise<MetadataRoute.Manifest> {
  const t = await getTranslations('shell');
  return {
    id: fieldAddress(),
    name: t('name'),
    short_name: t('name'),
    description: t('whatItIs'),
    start_url: fieldAddress(),
    scope: '/',
    display: 'standalone',
    background_color: '#f5f1e6',
    theme_color: '#f5f1e6',
    icons: [{ src: '/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
  };
}
