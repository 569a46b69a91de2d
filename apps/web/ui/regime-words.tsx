import type { Regime } from '@sprigline/contract';
import { useTranslations } from 'next-intl';

/** How a place is kept, in a sentence: "16 h of lamps a day, heated to 18 °C, mist, under: lid". */
export function useRegimeWords(): (regime: Pick<Regime, 'lightHours' | 'heatC' | 'air' | 'cover'>) => string {
  const t = useTranslations('regimes');
  return ({ lightHours, heatC, air, cover }) => {
    const told = [
      lightHours !== null && t('said.light', { n: lightHours }),
      heatC !== null && t('said.heat', { n: heatC }),
      air !== null && t(`air.${air}`),
      cover !== null && t('said.cover', { what: cover }),
    ].filter((words) => words !== false);
    return told.length > 0 ? told.join(', ') : t('said.nothing');
  };
}
