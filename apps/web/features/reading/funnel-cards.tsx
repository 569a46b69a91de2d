import type { FunnelGroup } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { apiOf } from '../../lib/workplace.ts';
import { Card } from '../../ui/card.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Species } from '../../ui/species.tsx';
import { dotGrid } from './donor-dots.ts';
import { FunnelFigure } from './funnel-figure.tsx';
import { FunnelKey } from './funnel-key.tsx';
import { fatesOf } from './funnel-shape.ts';
import { type Group, queryOf } from './reading-address.ts';

interface FunnelCardsProps {
  readonly programme: string;
  readonly groups: readonly FunnelGroup[];
  readonly by: Group;
  /** What the page is narrowed to. */
  readonly chosen: Readonly<Record<string, string>>;
}

/** A funnel for each stand, season or whatever they are told apart by; dots are of one size in all. */
export function FunnelCards({ programme, groups, by, chosen }: FunnelCardsProps) {
  const { readings: said } = useMessages();
  const grid = dotGrid(Math.max(...groups.map(({ donors }) => donors.came)));
  const nameOf = ({ name }: FunnelGroup): string => {
    if (name === '') return said.notKnown[by];
    return by === 'ageClass' ? said.ageClass[name as keyof typeof said.ageClass] : name;
  };
  return (
    <>
      <FunnelKey hasAway={groups.some(({ stages }) => stages.some((stage) => fatesOf(stage).away > 0))} />
      {groups.length > 1 && <p className="mb-4 max-w-prose text-sm text-ink-soft">{said.key.scale}</p>}
      <div className="grid items-start gap-6 xl:grid-cols-2">
        {groups.map((group) => (
          <Card key={group.key}>
            <h2 className="text-xl">{nameOf(group)}</h2>
            {group.taxon && <p className="mb-3 text-ink-soft">{group.commonName && `${group.commonName}, `}<Species name={group.taxon} /></p>}
            <FunnelFigure
              name={nameOf(group)}
              group={group}
              grid={grid}
              csv={`${apiOf(programme, 'readings', 'funnels.csv')}${queryOf({ ...chosen, by, ...only(group, by) })}`}
              onward={by === 'stand' && group.standId && (
                <p className="not-on-paper mt-3 font-semibold"><RowLink href={`${pageOf(programme, 'readings', 'stands', group.standId)}${queryOf(chosen)}`}>{said.more}</RowLink></p>
              )}
            />
          </Card>
        ))}
      </div>
    </>
  );
}

/** Narrows a reading to one of its groups, where a filter can. */
function only({ key, standId, taxonId }: FunnelGroup, by: Group): Record<string, string> {
  if (key === '') return {};
  if (by === 'stand') return { ...(standId && { standId }), ...(taxonId && { taxonId }) };
  return { [{ taxon: 'taxonId', season: 'season', recipe: 'recipeId', ageClass: 'ageClass' }[by]]: key };
}
