import type { Treatment } from '@sprigline/contract';
import { entryAllowedFrom } from '@sprigline/domain';
import type { Messages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** One treatment, column by column, the same on screen and on paper. */
export interface TreatmentWords {
  readonly day: string;
  readonly what: string;
  readonly where: string;
  readonly product: string;
  readonly rate: string;
  readonly by: string;
  readonly reentry: string;
  readonly note: string;
}

type T = ReturnType<typeof useTranslations<'treatments'>>;

export function treatmentWords(one: Treatment, said: Messages['treatments'], kinds: Messages['entries']['treatments'], t: T): TreatmentWords {
  const place = one.place && [...one.place.path, one.place.name].join(said.pathSign);
  const batch = one.batch && t('batch', { label: one.batch.label ?? said.noLabel });
  const allowed = entryAllowedFrom({ observedOn: one.observedOn, minute: one.minute ?? undefined, reentryHours: one.reentryHours ?? undefined });
  return {
    day: joined(sayDay(one.observedOn), one.minute !== null && clock(one.minute)),
    what: kinds[one.what],
    where: joined(batch, place, one.other),
    product: joined(one.product, one.registration),
    rate: one.rate ?? '',
    by: one.appliedBy ?? '',
    reentry: joined(
      one.reentryHours !== null && t('hours', { n: one.reentryHours }),
      allowed && one.reentryHours !== 0 && t('untilTime', { day: sayDay(allowed.day), time: clock(allowed.minute) }),
      one.reentry,
    ),
    note: [one.note, one.writtenBy && t('writtenBy', { name: one.writtenBy })].filter(Boolean).join(' – '),
  };
}

const joined = (...parts: readonly (string | null | undefined | false)[]): string => parts.filter(Boolean).join(', ');

const clock = (minute: number): string => `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
