import 'server-only';
import { DonorsAtRisk, ReadingChoices, ReadingLines, TimeAxis } from '@sprigline/contract';
import { readPart } from '../../lib/pages.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { queryOf } from './reading-address.ts';
import { AT_A_GLANCE } from './risk-part.tsx';

/** What every page asks that reads many stands together. @param after where its list of stands begins */
export async function readDashboard(programme: string, chosen: Readonly<Record<string, string>>, after?: string) {
  const [lines, axis, risk, choices] = await Promise.all([
    readPart(`${apiOf(programme, 'readings', 'lines')}${queryOf({ ...chosen, ...(after && { after }) })}`, ReadingLines),
    read(`${apiOf(programme, 'readings', 'time-axis')}${queryOf(chosen)}`, TimeAxis),
    read(`${apiOf(programme, 'readings', 'donors-at-risk')}${queryOf({ ...chosen, limit: String(AT_A_GLANCE) })}`, DonorsAtRisk),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices),
  ]);
  return { lines: lines.items, after: lines.after, axis, risk, choices };
}

export type Dashboard = Awaited<ReturnType<typeof readDashboard>>;
