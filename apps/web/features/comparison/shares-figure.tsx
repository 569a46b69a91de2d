import type { CompareBy, ComparedGroup } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { percent, percentRange } from '../../lib/percent.ts';
import { HowWorked } from '../../ui/how-worked.tsx';
import type { ShareMarks } from '../../ui/share-track.tsx';
import { type ShareSign, ShareKey, ShareTracks } from '../../ui/share-tracks.tsx';
import { groupName } from './group-name.ts';
import { SharesTable } from './shares-table.tsx';

const marksOf = ({ share, needsRange, range, wilson, byDonor }: ComparedGroup): ShareMarks => ({
  rate: share ?? undefined,
  open: needsRange ? (range ?? undefined) : undefined,
  alone: wilson ?? undefined,
  byDonor: byDonor?.kind === 'interval' ? byDonor : undefined,
  extremes: byDonor?.kind === 'best-and-worst' ? [byDonor.worst.rate, byDonor.best.rate] : [],
});

/** How many of each group rooted, with both ranges; its table twin; where it comes from. */
export function SharesFigure({ groups, by, csv }: { groups: readonly ComparedGroup[]; by: CompareBy; csv: string }) {
  const words = useMessages();
  const { shares: said, worked } = words.comparison;
  const t = useTranslations('comparison.shares');
  const rows = groups.filter(({ cuttings }) => cuttings > 0).map((group) => ({ key: group.key, name: groupName(group, by, words), group, marks: marksOf(group) }));
  const sentence = rows.map(({ name, group: { share, needsRange, range } }) => {
    if (share === null) return t('none', { name });
    return needsRange && range ? t('open', { name, range: percentRange(range) }) : t('part', { name, share: percent(share) });
  }).join('; ');
  const signs: ShareSign[] = ['rate', 'open', 'alone', 'byDonor'];
  if (rows.some(({ group }) => group.byDonor?.kind === 'best-and-worst')) signs.push('extremes');
  return (
    <figure>
      <figcaption className="mb-3 max-w-prose first-letter:uppercase">{sentence}.</figcaption>
      <div className="mb-6 flex flex-wrap items-center gap-x-12 gap-y-4">
        <ShareTracks title={t('title', { by: words.comparison.by[by] })} description={sentence} rows={rows} />
        <ShareKey title={said.keyTitle} said={said.key} signs={signs} />
      </div>
      <SharesTable groups={groups} by={by} />
      {rows.some(({ group }) => group.donorsDiffer) && <p className="mt-3 max-w-prose text-ink-soft">{said.together}</p>}
      <div className="mt-3 text-sm">
        <HowWorked said={worked.shares} />
        <a href={csv} className="not-on-paper inline-flex min-h-8 items-center underline">{said.csv}</a>
      </div>
    </figure>
  );
}
