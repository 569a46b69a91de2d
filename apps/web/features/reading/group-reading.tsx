import type { FunnelGroup } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Card } from '../../ui/card.tsx';
import { Section } from '../../ui/section.tsx';
import { dotGrid } from './donor-dots.ts';
import { FunnelFigure } from './funnel-figure.tsx';
import { FunnelKey } from './funnel-key.tsx';
import { fatesOf } from './funnel-shape.ts';
import { LossesTable } from './losses-table.tsx';
import { RatesFigure } from './rates-figure.tsx';

/** A species as a whole: its paired funnel, its rates, and where plants were lost. */
export function GroupReading({ name, group, csv }: { name: string; group: FunnelGroup; csv: string }) {
  const { readings: { stand: said } } = useMessages();
  const about = group.commonName ?? group.taxon ?? name;
  const headed = (words: string): string => `${words}: ${about.toLowerCase()}`;
  return (
    <>
      <div className="mb-12">
        <Card>
          <FunnelKey hasAway={group.stages.some((stage) => fatesOf(stage).away > 0)} />
          <FunnelFigure name={name} group={group} grid={dotGrid(group.donors.came)} csv={csv} />
        </Card>
      </div>
      <Section heading={headed(said.rates)} lead={said.ratesLead}><RatesFigure about={about} stages={group.stages} verdictOn={group.verdictOn} /></Section>
      <Section heading={headed(said.lost)} lead={said.lostLead}><LossesTable about={about} stages={group.stages} /></Section>
    </>
  );
}
