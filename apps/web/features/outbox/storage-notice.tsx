import { useTranslations } from 'next-intl';
import { STAYS } from '../../lib/phone/device.ts';
import type { Store } from '../../lib/phone/store.ts';
import { useKept } from '../../lib/phone/use-kept.ts';

interface Room {
  /** Whether the browser has promised to keep what is here; nothing while nothing was ever kept. */
  readonly stays: boolean | undefined;
  /** Safari outside of the home screen. */
  readonly isTab: boolean;
  /** Megabytes left, where the browser tells. */
  readonly freeMb: number | undefined;
}

/** Below that, a day of photos may not fit. Megabytes. */
const LOW_MB = 50;

/** How safe what is on this phone is from the browser itself. */
export function StorageNotice() {
  const t = useTranslations('outbox');
  const room = useKept<Room | undefined>(roomHere, undefined);
  if (!room) return null;
  const { stays, isTab, freeMb } = room;
  const isLow = freeMb !== undefined && freeMb < LOW_MB;
  if (stays === undefined && !isTab && !isLow) return null;
  return (
    <ul className="my-6 grid gap-1 text-sm">
      {stays === true && <li>✓ {t('stays')}</li>}
      {stays === false && <li>! {t('mayGo')}</li>}
      {isTab && <li className="font-semibold">! {t('seven')}</li>}
      {isLow && <li className="font-semibold text-rust">! {t('low', { free: freeMb })}</li>}
    </ul>
  );
}

/** Looked at again when something changes: the first thing that is kept brings the browser's answer. */
async function roomHere(store: Store): Promise<Room> {
  const [stays, estimate] = await Promise.all([store.get('settings', STAYS), navigator.storage?.estimate?.().catch(() => undefined)]);
  const { quota, usage } = estimate ?? {};
  return {
    stays: typeof stays === 'boolean' ? stays : undefined,
    isTab: 'standalone' in navigator && navigator.standalone !== true,
    freeMb: quota === undefined ? undefined : Math.floor((quota - (usage ?? 0)) / 1_000_000),
  };
}
