import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Tag } from '../../ui/tag.tsx';
import { LineMark } from './line-mark.tsx';
import type { LineNode, Plants } from './line-nodes.ts';

/** One thing on the stem: its mark, what it is, its name, and a fact or two. */
export function LineNodeView({ programme, node }: { programme: string; node: LineNode }) {
  const t = useTranslations('batches.line');
  switch (node.kind) {
    case 'stand':
      return <Node mark="stand" kind={t('stand')} name={<RowLink href={pageOf(programme, 'stands', node.id)}>{node.name}</RowLink>} />;
    case 'donorTree':
      return <Node mark="donorTree" kind={t('donorTree')} name={<Tag href={pageOf(programme, 'donor-trees', node.id)}>{node.label}</Tag>} />;
    case 'candidates':
      return <Node mark="donorTree" kind={t('candidates')} name={node.labels.map((label) => <Tag key={label}>{label}</Tag>)} />;
    case 'trip':
      return <Node mark="trip" kind={t('trip')} name={<RowLink href={pageOf(programme, 'trips', node.id)}>{sayDay(node.day)}</RowLink>} more={node.cuttings === undefined ? undefined : t('cuttings', { n: node.cuttings })} />;
    case 'sticking':
      return <Node mark="sticking" kind={t(node.isSecondTry ? 'secondTry' : 'sticking')} name={node.day ? sayDay(node.day) : t('dayUnknown')} more={[node.recipe, node.generation > 1 && t('generation', { n: node.generation })].filter(Boolean).join(', ')} />;
    case 'batch':
      return <PlantsNode programme={programme} plants={node} isHere={node.isHere} />;
  }
}

/** A batch on the line: stage, label, plants now, and where. */
export function PlantsNode({ programme, plants: { id, label, stage, day, plants, place }, isHere = false, more }: { programme: string; plants: Plants; isHere?: boolean; more?: string }) {
  const t = useTranslations('batches.line');
  const stages = useTranslations('words.stage');
  return (
    <Node
      mark={stage}
      kind={isHere ? t('here', { stage: stages(stage) }) : stages(stage)}
      name={<Tag {...(isHere ? {} : { href: pageOf(programme, 'batches', id) })}>{label}</Tag>}
      more={more ?? [t('plants', { n: plants }), place, t('since', { day: sayDay(day) })].filter(Boolean).join(', ')}
    />
  );
}

function Node({ mark, kind, name, more }: { mark: Parameters<typeof LineMark>[0]['of']; kind: string; name: ReactNode; more?: string | undefined }) {
  return (
    <div className="family-node">
      <LineMark of={mark} />
      <div className="min-w-0">
        <span className="block text-sm leading-tight text-ink-soft">{kind}</span>
        <span className="block font-semibold">{name}</span>
        {more && <span className="block text-sm leading-snug text-ink-soft">{more}</span>}
      </div>
    </div>
  );
}
