import 'server-only';
import { Workday } from '@sprigline/contract';
import { cookies } from 'next/headers';
import { z } from 'zod';
import { dayAfter, sayDay } from './calendar.ts';
import { nameIn, placesOf } from './lists.ts';
import { read } from './read.ts';
import { WORKDAY_COOKIE } from './workday-cookie.ts';
import { apiOf } from './workplace.ts';

/** The workdays that something logged now may be part of, and the one that this device remembers. */
export interface WorkdayChoices {
  readonly choices: readonly { readonly value: string; readonly words: string }[];
  readonly remembered: string | undefined;
}

/** So far back people still hand in what they did. */
const DAYS_BACK = 7;

export async function workdayChoices(programme: string, today: string): Promise<WorkdayChoices> {
  const [workdays, places, jar] = await Promise.all([read(`${apiOf(programme, 'workdays')}?limit=30`, z.array(Workday)), placesOf(programme), cookies()]);
  const near = workdays.filter(({ day }) => day <= dayAfter(today) && day >= dayAfter(today, -DAYS_BACK));
  const remembered = jar.get(WORKDAY_COOKIE)?.value;
  return {
    choices: near.map(({ id, day, placeId, tasks }) => ({
      value: id,
      words: [sayDay(day), placeId === null ? undefined : nameIn(places, placeId), tasks?.split('\n')[0]?.slice(0, 60)].filter(Boolean).join(', '),
    })),
    remembered: near.find(({ id }) => id === remembered)?.id,
  };
}
