import type { SiteReading } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Section } from '../../ui/section.tsx';
import { ChecksTable } from './checks-table.tsx';
import { More } from '../../ui/more.tsx';
import { SiteDonorsTable } from './site-donors-table.tsx';
import { SiteStand } from './site-stand.tsx';

/** A planting site: stand by stand, donor tree by donor tree, check by check. */
export function SiteParts({ programme, reading: { stands, donors, donorsInAll, checks }, csv }: { programme: string; reading: SiteReading; csv: string }) {
  const { dashboards: { site: said, sites, time } } = useMessages();
  const t = useTranslations('dashboards.site');
  return (
    <>
      <Section heading={said.stands} lead={said.standsLead}>
        <div className="grid items-start gap-6 xl:grid-cols-2">
          {stands.map((stand) => <SiteStand key={`${stand.standId ?? ''} ${stand.taxonId ?? ''}`} of={stand} />)}
        </div>
        <div className="mt-3 text-sm"><More words={time.worked}><p className="max-w-prose text-ink-soft">{said.method}</p></More></div>
      </Section>
      <Section heading={said.checks} lead={said.checksLead}>{checks.length === 0 ? <p>{said.noChecks}</p> : <ChecksTable checks={checks} />}</Section>
      <Section heading={said.donorsHeading} lead={said.donorsLead}>
        {donors.length < donorsInAll && <p className="mb-3 text-ink-soft">{t('donorsPart', { n: donors.length, all: donorsInAll })}</p>}
        <SiteDonorsTable programme={programme} donors={donors} />
        <p className="not-on-paper mt-3"><a href={csv} className="inline-flex min-h-8 items-center underline">{sites.csv}</a></p>
      </Section>
    </>
  );
}
