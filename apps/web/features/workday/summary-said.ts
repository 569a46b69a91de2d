import 'server-only';
import type { WorkdaySpecies, WorkdaySummary } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { sayDay } from '../../lib/calendar.ts';
import type { SummaryWords } from './summary-lines.ts';

/** A summary's words, for screen, paper and text alike. */
export async function summarySaid(summary: WorkdaySummary): Promise<SummaryWords> {
  const [{ workdays: said }, t] = await Promise.all([getMessages(), getTranslations('workdays')]);
  const { day, place, people, adults, children, hours, peopleHours, tasks } = summary;
  const others = adults - people.length;
  const names = people.length === 0 ? [] : [[people.join(', '), ...(others > 0 ? [t('others', { n: others })] : [])].join(' ')];
  const heads = [t('adults', { n: adults }), t('childrenThere', { n: children })].join(', ');
  const time = hours === null ? said.noHours : `${t('hoursOf', { n: hours })}, ${t('peopleHours', { n: peopleHours ?? 0 })}`;
  return {
    title: t('textTitle', { day: sayDay(day, 'long'), place: place === null ? '' : `, ${place}` }),
    who: [...(tasks === null ? [] : [tasks]), `${heads}; ${time}`, ...names],
    nameOf: ({ commonName, name }: WorkdaySpecies) => commonName ?? name ?? said.mixed,
    actOf: (act) => said.acts[act],
    inBatches: (n) => t('inBatches', { n }),
    nothing: said.nothing,
  };
}
