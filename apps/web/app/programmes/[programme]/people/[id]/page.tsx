import { Person } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { PersonForm } from '../../../../../features/person/person-form.tsx';
import { makeResetLink } from '../../../../../features/person/make-reset-link.action.ts';
import { removePerson } from '../../../../../features/person/remove-person.action.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { ActionForm } from '../../../../../ui/form/action-form.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ people }) => people.kind);

export default async function PersonPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: person, etag }, { role }, { people: said }, t] = await Promise.all([readVersion(apiOf(programme, 'people', id), Person), workplaceOf(programme), getMessages(), getTranslations('people')]);
  const { name } = person;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'people'), words: said.title }]} />
      <PageHeading kind={said.kind}>{name}</PageHeading>
      <Section heading={said.account}>
        <PersonForm programme={programme} person={person} etag={etag} isOwner={role === 'owner'} />
      </Section>
      {person.hasAccount ? (
        <Section heading={said.reset} lead={t('resetLead', { name })}>
          <ActionForm action={makeResetLink.bind(null, programme, id)} send={said.resetSend} look="quiet" madeWords={said.made}>
            <input type="hidden" name="id" value={newId()} />
          </ActionForm>
        </Section>
      ) : (
        <div className="mb-12"><ButtonLink look="quiet" href={`${pageOf(programme, 'people', 'invite')}?personId=${id}`}>{t('giveAccount', { name })}</ButtonLink></div>
      )}
      <Section heading={t('remove', { name })} lead={t('removeLead', { name })}>
        <ActionForm action={removePerson.bind(null, programme, id)} send={t('removeSend', { name })} look="grave" />
      </Section>
    </>
  );
}
