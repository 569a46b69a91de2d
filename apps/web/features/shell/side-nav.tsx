import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { pageOf } from '../../lib/page-address.ts';
import type { NavGroup } from './nav-items.ts';
import { NavLeaf } from './nav-leaf.tsx';

interface SideNavProps {
  readonly programme: { readonly handle: string; readonly name: string };
  readonly groups: readonly NavGroup[];
  /** Who is here, and the way out. */
  readonly foot: ReactNode;
}

/** On a desk: everything, in groups, on juniper. */
export function SideNav({ programme, groups, foot }: SideNavProps) {
  const t = useTranslations('shell');
  return (
    <header className="side-nav not-on-paper hidden lg:block">
      <div className="sticky top-0 flex h-dvh flex-col overflow-y-auto py-6 pl-5">
        <p className="pr-5 text-sm opacity-85">{t('name')}</p>
        <p className="pr-5 text-lg leading-tight font-semibold">{programme.name}</p>
        <div className="row-of-holes mt-4 mr-5 shrink-0" aria-hidden />
        <nav aria-label={t('nav')} className="mt-4 grow">
          {groups.map((group) => (
            <div key={group.name} className="mb-4">
              <p id={`nav-${group.name}`} className="px-3 text-sm opacity-85">
                {t(`groups.${group.name}`)}
              </p>
              <ul aria-labelledby={`nav-${group.name}`}>
                {group.items.map(({ name, path }) => (
                  <li key={name}>
                    <NavLeaf href={pageOf(programme.handle, ...path)} isExact={path.length === 0} look="nav-leaf">
                      {t(`items.${name}`)}
                    </NavLeaf>
                  </li>
                ))}
              </ul>
            </div>
          ))}
        </nav>
        <div className="mr-5 border-t border-current/30 pt-4 text-sm">{foot}</div>
      </div>
    </header>
  );
}
