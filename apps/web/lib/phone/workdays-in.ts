import type { Pack } from '@sprigline/contract';
import { sayDay } from '../calendar.ts';

/** Workdays of a pack to choose from: "25 Nov 2026, House 1, potting up". */
export const workdaysIn = ({ workdays }: Pick<Pack, 'workdays'>): { value: string; words: string }[] =>
  workdays.map(({ id, day, place, tasks }) => ({ value: id, words: [sayDay(day), place, tasks?.split('\n')[0]?.slice(0, 60)].filter(Boolean).join(', ') }));
