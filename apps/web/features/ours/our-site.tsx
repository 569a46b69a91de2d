import type { Ours, Site } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Cell } from '../../ui/cell.tsx';
import { Facts } from '../../ui/facts.tsx';
import { LinkList } from '../../ui/link-list.tsx';
import { PageHeading } from '../../ui/page-heading.tsx';
import { Section } from '../../ui/section.tsx';
import { Trail } from '../../ui/trail.tsx';
import { SiteNumbers } from './site-numbers.tsx';

/** A site as the partner who holds it sees it: what lives there, plot by plot, and the check of all of it. */
export function OurSite({ programme, site, ours }: { programme: string; site: Site; ours: Ours }) {
  const { sites: said } = useMessages();
  const t = useTranslations('ours');
  const numbers = ours.sites.find(({ id }) => id === site.id);
  const hasTrees = numbers?.species.some(({ alive, notFound }) => alive + notFound > 0);
  const at = `${pageOf(programme, 'batches')}?placeId=`;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'sites'), words: said.title }]} />
      <PageHeading
        kind={said.kind}
        lead={t('asOf', { day: sayDay(ours.asOf) })}
        act={hasTrees && <><ButtonLink href={pageOf(programme, 'places', site.id, 'check')}>{said.walk}</ButtonLink><ButtonLink look="quiet" href={`${at}${site.id}`}>{t('batchesThere')}</ButtonLink></>}
      >
        {site.name}
      </PageHeading>
      <div className="mb-12">{numbers && numbers.species.length > 0 ? <SiteNumbers site={numbers} /> : <p>{t('nothingPlanted')}</p>}</div>
      <Section heading={said.plots}>
        <LinkList links={site.plots.map(({ id, name }) => ({ href: `${at}${id}`, words: name }))} none={said.noPlotsYet} />
      </Section>
      <Section heading={t('about')}>
        <Facts facts={[{ term: said.fields.land, says: site.land }, { term: said.cell, says: <Cell cell={site.cell} /> }]} />
      </Section>
    </>
  );
}
