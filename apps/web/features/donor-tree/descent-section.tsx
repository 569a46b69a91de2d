import { Descent } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf } from '../../lib/workplace.ts';
import { LinkList } from '../../ui/link-list.tsx';
import { Section } from '../../ui/section.tsx';
import { DescentBatches } from './descent-batches.tsx';
import { StageCounts } from './stage-counts.tsx';
import { StickingHeading } from './sticking-heading.tsx';

interface DescentSectionProps {
  readonly programme: string;
  readonly treeId: string;
  /** Address of the page that tells what stands at a place. */
  readonly toPlace: (placeId: string) => string;
}

/** All that came of one wild tree: how many live at which stage, where they are planted, sticking by sticking. */
export async function DescentSection({ programme, treeId, toPlace }: DescentSectionProps) {
  const [answer, { donorTrees: said }] = await Promise.all([readIfAllowed(apiOf(programme, 'donor-trees', treeId, 'descent'), Descent), getMessages()]);
  if (!answer) return null;
  const { stickings, plantsByStage, sites, mixtures } = answer.body;
  if (stickings.length === 0 && mixtures.length === 0) return <Section heading={said.came}><p className="text-ink-soft">{said.nothingCame}</p></Section>;
  return (
    <>
      <Section heading={said.came}>
        <StageCounts plantsByStage={plantsByStage} />
      </Section>
      {sites.length > 0 && (
        <Section heading={said.planted}>
          <LinkList none="" links={sites.map(({ place, plants }) => ({ href: toPlace(place.id), words: `${place.name}: ${plants}` }))} />
        </Section>
      )}
      {stickings.map((sticking) => (
        <Section key={sticking.id} heading={<StickingHeading sticking={sticking} />}>
          {/* Each table is called by its first label, so that they are told apart by ear, too. */}
          <DescentBatches programme={programme} batches={sticking.batches} caption={`${said.batches}: ${sticking.batches[0]?.label ?? said.noLabel}`} />
        </Section>
      ))}
      {mixtures.length > 0 && (
        <Section heading={said.mixtures} lead={said.mixturesLead}>
          <DescentBatches programme={programme} batches={mixtures} caption={said.mixtures} />
        </Section>
      )}
    </>
  );
}
