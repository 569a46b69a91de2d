import type { MovementShown } from '@sprigline/contract';
import { useTranslations } from 'next-intl';

/** What the books booked, in a sentence: "2 died (black base)". */
export function useMovementWords(): (movement: Pick<MovementShown, 'effect' | 'n' | 'cause' | 'toStage'>) => string {
  const t = useTranslations('entries');
  const stage = useTranslations('words.stage');
  return ({ effect, n, cause, toStage }) => {
    const more = toStage ? t('effects.toStage', { stage: stage(toStage) }) : cause;
    return more ? `${t(`effects.${effect}`, { n })} (${more})` : t(`effects.${effect}`, { n });
  };
}
