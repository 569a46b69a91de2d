import type { ReviewGroup } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Way } from '../../ui/way.tsx';

interface GroupLinksProps {
  readonly groups: readonly ReviewGroup[];
  readonly code: string | undefined;
  readonly mine: boolean;
}

/** The kinds of doubt and how many there are of each: one kind at a time is quick work. */
export function GroupLinks({ groups, code, mine }: GroupLinksProps) {
  const { review: said, entries } = useMessages();
  const t = useTranslations('review');
  const sum = groups.reduce((all, { n }) => all + n, 0);
  const choices = [
    { words: said.all, n: sum, href: '?', isChosen: code === undefined && !mine },
    { words: said.mine, n: groups.reduce((all, group) => all + group.mine, 0), href: '?mine=1', isChosen: mine },
    ...groups.map((group) => ({ words: entries.flagShort[group.code], n: group.n, href: `?code=${group.code}`, isChosen: code === group.code && !mine })),
  ];
  return (
    <nav aria-label={said.kinds} className="not-on-paper mb-8">
      <ul className="flex flex-wrap gap-2">
        {choices.map(({ words, n, href, isChosen }) => (
          <li key={href}>
            <Way href={href} aria-current={isChosen ? 'page' : undefined} className={`inline-flex min-h-11 items-center gap-2 rounded-md border-2 px-4 no-underline ${isChosen ? 'border-juniper bg-lichen font-semibold text-on-lichen' : 'border-line-strong bg-sheet'}`}>
              {words} <span className="tabular-nums" aria-label={t('nOpen', { n })}>{t('n', { n })}</span>
            </Way>
          </li>
        ))}
      </ul>
    </nav>
  );
}
