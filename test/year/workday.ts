import { WorkdaySummary } from '@sprigline/contract';
import type { Diary } from './diary.ts';

interface Sums {
  readonly adults: number;
  readonly children: number;
  /** Hours of the day times adults. */
  readonly peopleHours: number;
  readonly stuck?: number;
  readonly potted?: number;
  readonly planted?: number;
}

/** The one page of a workday: who was there, for how long, and what was done with how many plants. */
export async function dayAddsUp(diary: Diary, workdayId: string, own: Sums): Promise<void> {
  const { adults, children, peopleHours, species, tasks } = WorkdaySummary.parse(await diary.get(`workdays/${workdayId}/summary`, diary.volunteer(7)));
  const sum = (of: 'stuck' | 'potted' | 'planted'): number => species.reduce((all, one) => all + one[of], 0);
  diary.compare(tasks ?? '', { adults, children, peopleHours, stuck: sum('stuck'), potted: sum('potted'), planted: sum('planted') }, { stuck: 0, potted: 0, planted: 0, ...own });
}
