import { Programme } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { changeSettings } from '../../../../features/programme/change-settings.action.ts';
import { months } from '../../../../lib/calendar.ts';
import { readVersion } from '../../../../lib/read.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { Facts } from '../../../../ui/facts.tsx';
import { ActionForm } from '../../../../ui/form/action-form.tsx';
import { ChoiceField } from '../../../../ui/form/choice-field.tsx';
import { ProseField } from '../../../../ui/form/prose-field.tsx';
import { TextField } from '../../../../ui/form/text-field.tsx';
import { ZoneField } from '../../../../ui/form/zone-field.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

export const generateMetadata = titled(({ programmes }) => programmes.settings);

export default async function SettingsPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ body: told, etag }, { role }, { programmes: said }] = await Promise.all([readVersion(apiOf(programme), Programme), workplaceOf(programme), getMessages()]);
  const { fields, hints } = said;
  if (role !== 'owner') {
    return (
      <>
        <PageHeading lead={said.onlyOwner}>{said.settings}</PageHeading>
        <Facts
          facts={[
            { term: fields.name, says: told.name },
            { term: fields.zone, says: told.zone },
            { term: fields.seasonStartsIn, says: months()[told.seasonStartsIn - 1] },
            { term: fields.rootedMeans, says: told.rootedMeans },
            { term: fields.readyMeans, says: told.readyMeans },
            { term: fields.gradeCheckEveryDays, says: told.gradeCheckEveryDays },
          ]}
        />
      </>
    );
  }
  return (
    <>
      <PageHeading lead={said.settingsLead}>{said.settings}</PageHeading>
      <ActionForm action={changeSettings.bind(null, programme, etag)} labels={fields} send={said.save}>
        <TextField name="name" value={told.name} />
        <ZoneField name="zone" value={told.zone} hint={hints.zone} />
        <ChoiceField name="seasonStartsIn" value={told.seasonStartsIn} hint={hints.seasonStartsIn} choices={months().map((words, at) => ({ value: String(at + 1), words }))} />
        <ProseField name="rootedMeans" rows={2} value={told.rootedMeans} hint={hints.rootedMeans} />
        <ProseField name="readyMeans" rows={2} value={told.readyMeans} hint={hints.readyMeans} />
        <TextField name="gradeCheckEveryDays" keypad="numeric" value={told.gradeCheckEveryDays} hint={hints.gradeCheckEveryDays} />
      </ActionForm>
    </>
  );
}
