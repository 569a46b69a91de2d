'use server';

import { ClimateWritten } from '@sprigline/contract';
import { celsiusOf, DomainError } from '@sprigline/domain';
import { getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { day, number, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';
import { minuteOfTime, momentIn } from './moment-in.ts';

/** Fields of the form by what the API calls them. */
const FIELD: Readonly<Record<string, string>> = { takenAt: 'time', temperatureC: 'temperature', humidityPercent: 'humidity' };

/** One look at a thermometer. */
export async function writeReading(programme: string, placeId: string, zone: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, async () => {
    const reading = { id: text(form, 'id'), placeId, takenAt: await takenAt(zone, form), temperatureC: temperatureC(form), humidityPercent: number(form, 'humidity') };
    try {
      const { body } = await ask(apiOf(programme, 'climate'), ClimateWritten, { method: 'POST', body: { readings: [reading] } });
      const problem = body.readings[0]?.problem;
      if (problem) throw new Refused(problem);
    } catch (error) {
      throw error instanceof Refused ? atItsField(error) : error;
    }
  });
  if (state.isDone) redirect(pageOf(programme, 'places', placeId, 'climate'));
  return state;
}

/** As it is stored: what was read in °F is converted here, once. What is no number goes on, for the API to say so. */
function temperatureC(form: FormData): number | string | undefined {
  const told = number(form, 'temperature');
  if (text(form, 'unit') !== 'F' || typeof told !== 'number') return told;
  try {
    return celsiusOf(told);
  } catch (error) {
    throw error instanceof DomainError ? unfit('temperature', error.message) : error;
  }
}

async function takenAt(zone: string, form: FormData): Promise<string> {
  const t = await getTranslations('climate');
  const [on, minute] = [day(form, 'day'), minuteOfTime(text(form, 'time'))];
  if (on === undefined || Number.isNaN(Date.parse(`${on}T00:00:00Z`))) throw unfit('day', 'received undefined');
  if (minute === undefined) throw unfit('time', t('whichTime'));
  const moment = momentIn(zone, on, minute);
  if (moment === undefined) throw unfit('time', t('noSuchTime'));
  return moment;
}

const unfit = (field: string, detail: string): Refused => new Refused({ type: '/problems/http/unfit-request', title: detail, status: 422, errors: [{ pointer: `#/${field}`, detail }] });

function atItsField({ problem }: Refused): Refused {
  const errors = problem.errors?.map(({ pointer, detail }) => {
    const name = pointer.split('/').at(-1) ?? '';
    return { pointer: FIELD[name] ? `#/${FIELD[name]}` : pointer, detail };
  });
  return new Refused(errors ? { ...problem, errors } : problem);
}
