import { getMessages } from 'next-intl/server';
import { openProgramme } from '../../../features/programme/open-programme.action.ts';
import { newId } from '../../../lib/new-id.ts';
import { titled } from '../../../lib/titled.ts';
import { DoorPage } from '../../../ui/door-page.tsx';
import { ActionForm } from '../../../ui/form/action-form.tsx';
import { TextField } from '../../../ui/form/text-field.tsx';
import { ZoneField } from '../../../ui/form/zone-field.tsx';

export const generateMetadata = titled(({ programmes }) => programmes.openTitle);

export default async function OpenProgrammePage() {
  const { programmes: said } = await getMessages();
  return (
    <DoorPage heading={said.openTitle} lead={said.openLead}>
      <ActionForm action={openProgramme} labels={said.fields} send={said.open}>
        <input type="hidden" name="id" value={newId()} />
        <TextField name="name" hint={said.hints.name} />
        <TextField name="handle" hint={said.hints.handle} />
        <ZoneField name="zone" hint={said.hints.zone} />
      </ActionForm>
    </DoorPage>
  );
}
