import { getMessages } from 'next-intl/server';
import { InviteForm } from '../../../../../features/person/invite-form.tsx';
import { partnersOf, peopleOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface InvitePageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ personId?: string }>;
}

export const generateMetadata = titled(({ people }) => people.inviteTitle);

export default async function InvitePage({ params, searchParams }: InvitePageProps) {
  const [{ programme }, { personId }] = await Promise.all([params, searchParams]);
  const [{ role }, people, partners, { people: said }] = await Promise.all([workplaceOf(programme), peopleOf(programme), partnersOf(programme), getMessages()]);
  const nameless = people.filter(({ hasAccount }) => hasAccount === false);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'people'), words: said.title }]} />
      <PageHeading lead={said.inviteLead}>{said.inviteTitle}</PageHeading>
      <InviteForm programme={programme} invitationId={newId()} isOwner={role === 'owner'} partners={partners} byName={nameless} personId={personId} />
    </>
  );
}
