import './family-line.css';
import type { Batch } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { Section } from '../../ui/section.tsx';
import { LineNodeView, PlantsNode } from './line-node.tsx';
import { lineOf } from './line-nodes.ts';

/**
 * The line of descent as one strip: from the wild stand to this batch, and on to
 * what came of it. A list in the order of time, drawn as a stem; upright on a phone.
 */
export function FamilyLine({ programme, batch }: { programme: string; batch: Batch }) {
  const t = useTranslations('batches');
  const { trunk, parts, children } = lineOf(batch);
  return (
    <Section heading={t('line.title')} lead={t('line.lead')}>
      <div className="family">
        {parts.length > 0 && (
          <>
            <p className="mb-2 font-semibold">{t('line.parts')}</p>
            <ol className="family-parts" aria-label={t('line.parts')}>
              {parts.map((part) => (
                <li key={part.id}><PlantsNode programme={programme} plants={part} more={t('line.of', { n: part.n })} /></li>
              ))}
            </ol>
          </>
        )}
        <ol className="family-trunk">
          {trunk.map((node, at) => (
            <li key={at} className={node.kind === 'batch' && node.isHere ? 'family-here' : ''} aria-current={node.kind === 'batch' && node.isHere ? 'true' : undefined}>
              <LineNodeView programme={programme} node={node} />
            </li>
          ))}
          <li className="family-next">
            {children.length === 0 ? (
              <p className="family-none">{batch.balance > 0 ? t('line.stillHere') : t('line.noneCame')}</p>
            ) : (
              <ol aria-label={t('line.children')} className="family-children">
                {children.map((child) => (
                  <li key={child.id}><PlantsNode programme={programme} plants={child} /></li>
                ))}
              </ol>
            )}
          </li>
        </ol>
      </div>
    </Section>
  );
}
