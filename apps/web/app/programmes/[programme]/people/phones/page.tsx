import { Device, DEVICE_SILENT_AFTER_HOURS } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { PhoneList } from '../../../../../features/phone/phone-list.tsx';
import { PutAsideForm } from '../../../../../features/phone/put-aside-form.tsx';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';

export const generateMetadata = titled(({ phones }) => phones.title);

/** On which phones entries may be stuck; a volunteer sees their own. */
export default async function PhonesPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk, zone }, devices, { phones: said }, t] = await Promise.all([workplaceOf(programme), read(apiOf(programme, 'devices'), z.array(Device)), getMessages(), getTranslations('phones')]);
  const mayHold = ({ isSilent, isStuck }: Device): boolean => isSilent || isStuck;
  const [silent, others] = [devices.filter(mayHold), devices.filter((device) => !mayHold(device))];
  const inUse = devices.filter(({ setAside }) => setAside === null);
  return (
    <>
      <PageHeading lead={isDesk ? said.lead : said.leadOwn}>{said.title}</PageHeading>
      {devices.length === 0 && <p className="text-ink-soft">{said.none}</p>}
      {devices.length > 0 && (
        <Section heading={said.silent} lead={silent.length > 0 && t('silentLead', { hours: DEVICE_SILENT_AFTER_HOURS })}>
          {silent.length === 0 ? <p>{said.noneSilent}</p> : <PhoneList devices={silent} zone={zone} />}
        </Section>
      )}
      {others.length > 0 && <Section heading={said.others}><PhoneList devices={others} zone={zone} /></Section>}
      {isDesk && inUse.length > 0 && <Section heading={said.putAside} lead={said.putAsideLead}><PutAsideForm programme={programme} devices={inUse} /></Section>}
    </>
  );
}
