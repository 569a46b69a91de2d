import { Device } from '@sprigline/contract';
import { getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

const AT_A_GLANCE = 4;

/** Phones on which entries may be stuck; nothing as long as there are none. */
export async function StuckPhones({ programme, zone }: { programme: string; zone: string }) {
  const [devices, t] = await Promise.all([read(apiOf(programme, 'devices'), z.array(Device)), getTranslations('phones')]);
  const stuck = devices.filter(({ isSilent, isStuck }) => isSilent || isStuck);
  if (stuck.length === 0) return null;
  const said = ({ name, person, unsent, oldestUnsentOn, isSilent, lastHeardAt }: Device): string => {
    const called = name ?? t('unnamed', { person });
    return isSilent || oldestUnsentOn === null ? t('homeOne', { name: called, when: sayMoment(lastHeardAt, zone) }) : t('homeStuck', { name: called, n: unsent, day: sayDay(oldestUnsentOn) });
  };
  return (
    <Section heading={t('home')}>
      <ul className="grid gap-1">
        {stuck.slice(0, AT_A_GLANCE).map((device) => <li key={device.id}>! {said(device)}</li>)}
      </ul>
      <p className="mt-2"><RowLink href={pageOf(programme, 'people', 'phones')}>{t('homeAll')}</RowLink></p>
    </Section>
  );
}
