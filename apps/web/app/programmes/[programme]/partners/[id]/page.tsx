import { Partner } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { sayDay } from '../../../../../lib/calendar.ts';
import { sitesOf, standsOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Facts } from '../../../../../ui/facts.tsx';
import { LinkList } from '../../../../../ui/link-list.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ partners }) => partners.kind);

export default async function PartnerPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [partner, stands, sites, { isDesk }, { partners: said }] = await Promise.all([
    read(apiOf(programme, 'partners', id), Partner), standsOf(programme), sitesOf(programme), workplaceOf(programme), getMessages(),
  ]);
  const its = (noun: string, things: readonly { id: string; name: string; partnerId: string | null }[]) =>
    things.filter((thing) => thing.partnerId === id).map((thing) => ({ href: pageOf(programme, noun, thing.id), words: thing.name }));
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'partners'), words: said.title }]} />
      <PageHeading kind={said.kind} act={isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'partners', id, 'edit')}>{said.change}</ButtonLink>}>
        {partner.name}
      </PageHeading>
      <div className="mb-12">
        <Facts facts={[{ term: said.fields.since, says: sayDay(partner.since) }, { term: said.fields.until, says: partner.until && sayDay(partner.until) }]} />
      </div>
      <Section heading={said.stands}><LinkList links={its('stands', stands)} none={said.none} /></Section>
      <Section heading={said.sites}><LinkList links={its('sites', sites)} none={said.none} /></Section>
    </>
  );
}
