import { Invitation } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { addPerson } from '../../../../features/person/add-person.action.ts';
import { InvitationList } from '../../../../features/person/invitation-list.tsx';
import { PeopleTable } from '../../../../features/person/people-table.tsx';
import { partnersOf, peopleOf } from '../../../../lib/lists.ts';
import { newId } from '../../../../lib/new-id.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { ActionForm } from '../../../../ui/form/action-form.tsx';
import { TextField } from '../../../../ui/form/text-field.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Section } from '../../../../ui/section.tsx';

export const generateMetadata = titled(({ people }) => people.title);

export default async function PeoplePage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk, zone }, people, { people: said, phones: words }] = await Promise.all([workplaceOf(programme), peopleOf(programme), getMessages()]);
  const phones = <RowLink href={pageOf(programme, 'people', 'phones')}>{words.link}</RowLink>;
  if (!isDesk) {
    return (
      <>
        <PageHeading lead={said.lead}>{said.title}</PageHeading>
        <p className="mb-4">{phones}</p>
        <ul className="grid gap-1">{people.map(({ id, name }) => <li key={id}>{name}</li>)}</ul>
      </>
    );
  }
  const [partners, invitations] = await Promise.all([partnersOf(programme), read(apiOf(programme, 'invitations'), z.array(Invitation))]);
  const open = invitations.filter(({ state }) => state === 'open');
  return (
    <>
      <PageHeading lead={said.lead} act={<ButtonLink href={pageOf(programme, 'people', 'invite')}>{said.invite}</ButtonLink>}>{said.title}</PageHeading>
      <div className="mb-12">
        <PeopleTable programme={programme} people={people} partners={partners} />
        <p className="mt-3">{phones}</p>
      </div>
      <Section heading={said.open}>
        {open.length === 0 ? <p className="text-ink-soft">{said.noneOpen}</p> : <InvitationList programme={programme} invitations={open} zone={zone} />}
      </Section>
      <Section heading={said.addByName} lead={said.addByNameLead}>
        <ActionForm action={addPerson.bind(null, programme)} labels={said.fields} send={said.add} look="quiet">
          <input type="hidden" name="id" value={newId()} />
          <TextField name="name" />
        </ActionForm>
      </Section>
    </>
  );
}
