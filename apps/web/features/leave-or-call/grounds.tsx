import type { RootingGround } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { percent } from '../../lib/percent.ts';
import { HowWorked } from '../../ui/how-worked.tsx';
import { More } from '../../ui/more.tsx';

/** Own cuttings and what is held beside them, species by species; and how it was worked out. */
export function Grounds({ grounds }: { grounds: readonly RootingGround[] }) {
  const { leaveOrCall: said } = useMessages();
  const t = useTranslations('leaveOrCall');
  return (
    <div className="mt-4 text-sm">
      <More words={said.groundHeading}>
        {grounds.map(({ taxonId, taxon, commonName, cuttings, donors, rooted, prior, firstRoots }) => (
          <p key={taxonId} className="mb-2 max-w-prose text-ink-soft">
            {t('ground', {
              name: commonName ?? taxon, cuttings, donors, rooted, prior: prior.plants, mean: percent(prior.mean), first: prior.firstRootsDays,
              source: prior.basis === 'species-row' ? prior.source : said.common, days: firstRoots.days, seen: firstRoots.basis,
            })}
          </p>
        ))}
      </More>
      <HowWorked said={said.worked} />
    </div>
  );
}
