import type { ReadingLines } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Section } from '../../ui/section.tsx';
import { LinesList } from './lines-list.tsx';
import { LinesTable } from './lines-table.tsx';
import { More } from '../../ui/more.tsx';
import { queryOf } from './reading-address.ts';

interface LinesPartProps {
  readonly programme: string;
  readonly reading: ReadingLines;
  readonly chosen: Readonly<Record<string, string>>;
  /** Where the next part begins. */
  readonly after: string | undefined;
}

/** Stand by stand, the ones that need eyes first; more of them one step further. */
export function LinesPart({ programme, reading: { inAll, lines }, chosen, after }: LinesPartProps) {
  const { dashboards: { lines: said } } = useMessages();
  const t = useTranslations('dashboards.lines');
  return (
    <Section heading={said.heading} lead={said.lead}>
      {lines.length < inAll.lines && <p className="mb-3 text-ink-soft">{t('part', { n: lines.length, all: inAll.lines })}</p>}
      <LinesList programme={programme} lines={lines} chosen={chosen} />
      {after && <div className="not-on-paper mt-4"><ButtonLink look="quiet" href={queryOf({ ...chosen, after })}>{said.more}</ButtonLink></div>}
      <div className="mt-4 text-sm">
        <More words={said.table}><LinesTable lines={lines} /></More>
        <a href={`${apiOf(programme, 'readings', 'lines.csv')}${queryOf(chosen)}`} className="not-on-paper inline-flex min-h-8 items-center underline">{said.csv}</a>
      </div>
    </Section>
  );
}
