import type { FunderRow } from '@sprigline/contract';
import type { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { percent, percentRange } from '../../lib/percent.ts';

type Told = Omit<FunderRow, 'site' | 'season' | 'taxon'>;
type T = ReturnType<typeof useTranslations<'reports.funder'>>;

/** One line of the report in words, for screen and paper. */
export function funderWords(row: Told, t: T) {
  const { rates, byUnit, ageDays, checkedOn } = row;
  return {
    notLooked: row.notChecked + row.notLooked,
    rate: rates ? percent(rates.low) : t('noRate'),
    without: rates?.high === undefined || row.notFound === 0 ? '' : percent(rates.high),
    alone: rates ? percentRange(rates.wilsonLow) : '',
    unit: byUnit ? t(byUnit.unit, { range: percentRange(byUnit), units: byUnit.units }) : rates ? t('noUnit') : '',
    age: ageDays === null ? '' : ageDays.least === ageDays.most ? t('days', { least: ageDays.least }) : t('daysTo', { least: ageDays.least, most: ageDays.most }),
    checked: checkedOn === null ? '' : checkedOn.first === checkedOn.last ? sayDay(checkedOn.last) : `${sayDay(checkedOn.first)} – ${sayDay(checkedOn.last)}`,
  };
}
