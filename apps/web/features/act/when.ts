import { minuteOfDay } from '../../lib/calendar.ts';
import { rememberedWorkday } from '../../lib/workday-cookie.ts';
import type { Moment, When } from './act.ts';

let last: { readonly madeOn: string; readonly when: When } | undefined;

/** As it was told last on this day, else today by whoever logs: a bench of trays is mostly the work of one hour. */
export function whenBefore(today: string, workdays: readonly { readonly id: string }[]): When {
  if (last?.madeOn === today) return last.when;
  const known = rememberedWorkday();
  return { day: today, seenBy: '', workdayId: workdays.some(({ id }) => id === known) ? known : undefined };
}

export function rememberWhen(today: string, when: When): void {
  last = { madeOn: today, when };
}

/** Now. Of another day nobody knows the minute. */
export const momentOf = ({ day }: When, today: string, zone: string): Moment => ({ writtenAt: new Date().toISOString(), minute: day === today ? minuteOfDay(zone) : undefined });
