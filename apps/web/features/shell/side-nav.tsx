import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { pageOf } from '../../lib/page-address.ts';
import type { NavGroup } from './nav-items.ts';
import { GoToLabel } from './go-to-label.tsx';
import { NavFold } from './nav-fold.tsx';
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
        <GoToLabel programme={programme.handle} />
        <nav aria-label={t('nav')} className="mt-4 grow">
          {groups.map((group, at) => {
            const ways = <NavWays programme={programme.handle} group={group} />;
            // What is done every day is never folded away.
            if (at === 0) return <div key={group.name} className="mb-2">{ways}</div>;
            return (
              <NavFold key={group.name} words={t(`groups.${group.name}`)} hrefs={group.items.map(({ path }) => pageOf(programme.handle, ...path))}>
                {ways}
              </NavFold>
            );
          })}
        </nav>
        <div className="mr-5 border-t border-current/30 pt-4 text-sm">{foot}</div>
      </div>
    </header>
  );
}

function NavWays({ programme, group }: { programme: string; group: NavGroup }) {
  const t = useTranslations('shell');
  return (
    <ul aria-label={t(`groups.${group.name}`)}>
      {group.items.map(({ name, path }) => (
        <li key={name}>
          <NavLeaf href={pageOf(programme, ...path)} isExact={path.length === 0} apart={group.items.filter((other) => other.name !== name).map((other) => pageOf(programme, ...other.path))} look="nav-leaf">
            {t(`items.${name}`)}
          </NavLeaf>
        </li>
      ))}
    </ul>
  );
}
