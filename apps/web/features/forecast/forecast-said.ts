import type { Forecast } from '@sprigline/contract';
import type { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { percent } from '../../lib/percent.ts';

type Words = ReturnType<typeof useTranslations<'forecast'>>;
type OfSpecies = Forecast['species'][number];

/** Half a year, and the end. */
const HALF_A_YEAR = 6;

/** What a forecast says, with its ranges. */
export function forecastSentence(t: Words, { here, months }: OfSpecies): string {
  const [half, end] = [months[HALF_A_YEAR], months.at(-1)];
  if (!half || !end) return '';
  return t('says', {
    now: here.potted, cuttings: here.cuttings, liners: here.liners,
    half: sayDay(half.on), halfN: Math.round(half.expected), halfLower: Math.floor(half.lower), halfUpper: Math.ceil(half.upper),
    end: sayDay(end.on), endN: Math.round(end.expected), endLower: Math.floor(end.lower), endUpper: Math.ceil(end.upper),
  });
}

/** How such forecasts did before, or that nobody can say. */
export function calibrationSentence(t: Words, { calibration }: OfSpecies): string {
  if (!calibration) return t('tooLittle');
  const { covered, forecasts, ratio } = calibration;
  return t('good', { n: forecasts, held: Math.round(covered * forecasts), ratio: percent(ratio ?? 0) });
}
