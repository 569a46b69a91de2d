import { Ours, Site } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { OurSite } from '../../../../../features/ours/our-site.tsx';
import { AddPlotForm } from '../../../../../features/site/add-plot-form.tsx';
import { nameIn, partnersOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Cell } from '../../../../../ui/cell.tsx';
import { Facts } from '../../../../../ui/facts.tsx';
import { LinkList } from '../../../../../ui/link-list.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ sites }) => sites.kind);

export default async function SitePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [site, partners, { isDesk, role }, { sites: said }] = await Promise.all([read(apiOf(programme, 'sites', id), Site), partnersOf(programme), workplaceOf(programme), getMessages()]);
  if (role === 'partner') return <OurSite programme={programme} site={site} ours={await read(apiOf(programme, 'ours'), Ours)} />;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'sites'), words: said.title }]} />
      <PageHeading
        kind={said.kind}
        act={<><ButtonLink href={pageOf(programme, 'places', id, 'round')}>{said.walk}</ButtonLink><ButtonLink look="quiet" href={pageOf(programme, 'readings', 'sites', id)}>{said.reading}</ButtonLink>{isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'sites', id, 'edit')}>{said.change}</ButtonLink>}</>}
      >
        {site.name}
      </PageHeading>
      <div className="mb-12">
        <Facts
          facts={[
            { term: said.fields.land, says: site.land },
            { term: said.fields.partnerId, says: site.partnerId && nameIn(partners, site.partnerId) },
            { term: said.cell, says: <Cell cell={site.cell} /> },
            { term: said.fields.note, says: site.note },
          ]}
        />
      </div>
      <Section heading={said.plots}>
        <LinkList links={site.plots.map((plot) => ({ href: pageOf(programme, 'places', plot.id), words: plot.name }))} none={said.noPlots} />
      </Section>
      {isDesk && (
        <Section heading={said.addPlot}>
          <AddPlotForm programme={programme} siteId={id} plotId={newId()} plots={site.plots.length} />
        </Section>
      )}
    </>
  );
}
