import type { Device } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';

/** Phones and tablets, with what may be stuck on each. */
export function PhoneList({ devices, zone }: { devices: readonly Device[]; zone: string }) {
  return <ul className="grid gap-3">{devices.map((device) => <Phone key={device.id} device={device} zone={zone} />)}</ul>;
}

function Phone({ device, zone }: { device: Device; zone: string }) {
  const t = useTranslations('phones');
  const { name, person, unsent, oldestUnsentOn, lastHeardAt, firstHeardAt, packedAt, isSilent, isStuck, setAside } = device;
  const hasOnlyPacked = unsent === 0 && packedAt !== null && packedAt >= lastHeardAt;
  return (
    <li className="rounded-lg border border-line bg-sheet p-4">
      <strong className="block">{name ?? t('unnamed', { person })}</strong>
      {name !== null && <span className="block text-sm">{t('person', { person })}</span>}
      <span className="my-1 flex flex-wrap gap-2">
        {unsent > 0 && oldestUnsentOn !== null && <Flag tone={isSilent || isStuck ? 'grave' : 'look'}>{t('unsent', { n: unsent, day: sayDay(oldestUnsentOn) })}</Flag>}
        {hasOnlyPacked && <Flag tone={isSilent ? 'look' : 'plain'}>{t('packed', { when: sayMoment(packedAt, zone) })}</Flag>}
        {unsent === 0 && !hasOnlyPacked && <Flag tone="good">{t('nothingUnsent')}</Flag>}
      </span>
      <span className="block text-sm text-ink-soft">{t('heard', { when: sayMoment(lastHeardAt, zone) })}, {t('first', { when: sayMoment(firstHeardAt, zone) })}</span>
      {setAside && <span className="block text-sm">{t('aside', { by: setAside.by, reason: setAside.reason })}</span>}
    </li>
  );
}
