import { useMessages } from 'next-intl';
import { apiOf } from '../../lib/workplace.ts';
import { Section } from '../../ui/section.tsx';
import type { Dashboard } from './dashboard-reads.ts';
import { LinesPart } from './lines-part.tsx';
import { queryOf } from './reading-address.ts';
import { RiskPart } from './risk-part.tsx';
import { TimeFigure } from './time-figure.tsx';

/** What the pages of a programme, a species and a season have in common. */
export function DashboardParts({ programme, of: { lines, after, axis, risk }, chosen }: { programme: string; of: Dashboard; chosen: Readonly<Record<string, string>> }) {
  const { dashboards: { time: said } } = useMessages();
  return (
    <>
      <LinesPart programme={programme} reading={lines} chosen={chosen} after={after} />
      <Section heading={said.heading} lead={said.lead}>
        <TimeFigure axis={axis} csv={`${apiOf(programme, 'readings', 'time-axis.csv')}${queryOf(chosen)}`} />
      </Section>
      <RiskPart programme={programme} reading={risk} chosen={chosen} />
    </>
  );
}
