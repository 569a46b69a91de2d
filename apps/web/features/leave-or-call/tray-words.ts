import type { WaitingTray } from '@sprigline/contract';
import { useTranslations } from 'next-intl';

/** Plants as people say them: whole ones, and a tenth below ten, so that few is not none. */
export const plantsSaid = (n: number): string => (n < 0.05 ? '0' : n < 10 ? n.toFixed(1) : String(Math.round(n)));

/** Words for what a tray may bring. */
export function useTrayWords() {
  const t = useTranslations('leaveOrCall');
  const chance = (share: number): string => (share < 0.05 ? t('under') : share > 0.95 ? t('nearlyAll') : t('ofTen', { n: Math.round(share * 10) || 1 }));
  return {
    chance,
    inAll: ({ inAll, months }: WaitingTray): string => (inAll === null || months === null ? '' : t('inAll', { n: plantsSaid(inAll), months })),
    soon: ({ nextMonth }: WaitingTray): string => (nextMonth === null ? '' : t('soon', { n: nextMonth < 0.05 ? t('none') : plantsSaid(nextMonth) })),
  };
}
