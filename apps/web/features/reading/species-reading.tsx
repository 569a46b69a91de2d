import type { Diversity, DonorHolding, FunnelGroup } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Card } from '../../ui/card.tsx';
import { Section } from '../../ui/section.tsx';
import { dotGrid } from './donor-dots.ts';
import { FunnelFigure } from './funnel-figure.tsx';
import { FunnelKey } from './funnel-key.tsx';
import { fatesOf } from './funnel-shape.ts';
import { GenesFigure } from './genes-figure.tsx';
import { HoldingsList } from './holdings-list.tsx';
import { LossesTable } from './losses-table.tsx';
import { More } from '../../ui/more.tsx';
import { RatesFigure } from './rates-figure.tsx';
import { WorkedOut } from './worked-out.tsx';

/** As many donor trees as one takes in at a glance; the others are one step away. */
const FEWEST = 15;

interface SpeciesReadingProps {
  readonly programme: string;
  readonly stand: string;
  /** Whether the page tells of other species too, so that its headings must say of which they are. */
  readonly isOneOfMany: boolean;
  /** How many went through which stage; not there while nothing was stuck. */
  readonly group: FunnelGroup | undefined;
  readonly diversity: Diversity['stands'][number] | undefined;
  /** Donor trees of this species, fewest rooted plants first. */
  readonly donors: readonly DonorHolding[];
  readonly csv: string;
}

/** All there is to read of one species in one stand. */
export function SpeciesReading({ programme, stand, isOneOfMany, group, diversity, donors, csv }: SpeciesReadingProps) {
  const { readings: { stand: said } } = useMessages();
  const t = useTranslations('readings.stand');
  const about = group?.commonName ?? group?.taxon ?? diversity?.commonName ?? diversity?.taxon ?? stand;
  const headed = (words: string): string => (isOneOfMany ? `${words}: ${about.toLowerCase()}` : words);
  return (
    <>
      {group && (
        <>
          <div className="mb-12">
            <Card>
              <FunnelKey hasAway={group.stages.some((stage) => fatesOf(stage).away > 0)} />
              <FunnelFigure name={`${stand}, ${about}`} group={group} grid={dotGrid(group.donors.came)} csv={csv} />
            </Card>
          </div>
          <Section heading={headed(said.rates)} lead={said.ratesLead}><RatesFigure about={about} stages={group.stages} verdictOn={group.verdictOn} /></Section>
          <Section heading={headed(said.lost)} lead={said.lostLead}>
            <LossesTable about={about} stages={group.stages} />
            <div className="mt-3 text-sm"><WorkedOut what="losses" /></div>
          </Section>
        </>
      )}
      {diversity && <Section heading={headed(said.genes)} lead={said.genesLead}><GenesFigure stand={diversity} /></Section>}
      {donors.length > 0 && (
        <Section heading={headed(said.fewest)} lead={said.fewestLead}>
          <HoldingsList programme={programme} donors={donors.slice(0, FEWEST)} isStandHidden />
          {donors.length > FEWEST && (
            <More words={t('fewestRest', { n: donors.length - FEWEST })}>
              <HoldingsList programme={programme} donors={donors.slice(FEWEST)} isStandHidden />
            </More>
          )}
          <div className="mt-3 text-sm"><WorkedOut what="risk" /></div>
        </Section>
      )}
    </>
  );
}
