import { getMessages } from 'next-intl/server';
import { KeyForm } from '../../../../../features/key/key-form.tsx';
import { partnersOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ keys }) => keys.addTitle);

export default async function NewKeyPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [partners, { keys: said }] = await Promise.all([partnersOf(programme), getMessages()]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'keys'), words: said.title }]} />
      <PageHeading lead={said.addLead}>{said.addTitle}</PageHeading>
      <KeyForm programme={programme} keyId={newId()} partners={partners} />
    </>
  );
}
