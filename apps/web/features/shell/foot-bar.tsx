import { useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import type { NavGroup, NavName } from './nav-items.ts';
import { NavLeaf } from './nav-leaf.tsx';

const SHAPES: Readonly<Partial<Record<NavName | 'more', string>>> = {
  home: 'M4 11 12 4l8 7v9H4Z',
  sites: 'M4 20h16M7 20v-5M7 15 4.500 15 7 9l2.500 6ZM16 20v-6M16 14h-3.500L16 5l3.500 9Z',
  places: 'M3 8h18v6H3ZM7 8v6M12 8v6M17 8v6M5 14v6M19 14v6',
  batches: 'M12 13V3M12 8 8.500 6M12 6.500l3.500-2M5 13h14l-2 8H7Z',
  donorTrees: 'M3 20h18M12 20V4M12 16l-6-3M12 16l6-3M12 11 7.500 8.500M12 11l4.500-2.500',
  scan: 'M4 8V4h4M16 4h4v4M20 16v4h-4M8 20H4v-4M8 8h3v3H8ZM13 8h3v3M8 13h3v3M14 14h2v2',
  more: 'M5 7h14M5 12h14M5 17h14',
};

/** On a phone: the few ways at hand, at the thumb. */
export function FootBar({ programme, groups, atHand }: { programme: string; groups: readonly NavGroup[]; atHand: readonly NavName[] }) {
  const t = useTranslations('shell');
  const items = groups.flatMap((group) => group.items).filter(({ name }) => atHand.includes(name));
  const ways = [...items.map(({ name, path }) => ({ name, path })), { name: 'more' as const, path: ['more'] }];
  return (
    <nav aria-label={t('nav')} className="foot-bar not-on-paper fixed inset-x-0 bottom-0 z-10 lg:hidden">
      <ul className="flex">
        {ways.map(({ name, path }) => (
          <li key={name} className="min-w-0 flex-1">
            <NavLeaf href={pageOf(programme, ...path)} isExact={path.length === 0} look="foot-leaf">
              <svg viewBox="0 0 24 24" className="size-6" aria-hidden>
                <path d={SHAPES[name]} fill="none" stroke="currentColor" strokeWidth="1.8" strokeLinecap="round" strokeLinejoin="round" />
              </svg>
              {name === 'more' ? t('more') : t(`short.${name as 'home'}`)}
            </NavLeaf>
          </li>
        ))}
      </ul>
    </nav>
  );
}
