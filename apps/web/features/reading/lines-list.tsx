import type { ReadingLine } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Species } from '../../ui/species.tsx';
import { PairedBars } from './paired-bars.tsx';
import { percent } from '../../lib/percent.ts';
import { queryOf } from './reading-address.ts';

interface LinesListProps {
  readonly programme: string;
  readonly lines: readonly ReadingLine[];
  /** What the page is narrowed to; handed on to the page of the stand. */
  readonly chosen: Readonly<Record<string, string>>;
}

/** A line for each stand and species: its two small funnels, what is left, and what needs eyes. */
export function LinesList({ programme, lines, chosen }: LinesListProps) {
  return (
    <ul className="divide-y divide-line overflow-hidden rounded-lg border border-line bg-sheet">
      {lines.map((line) => (
        <li key={line.key} className="grid items-center gap-x-6 gap-y-2 px-4 py-3 break-inside-avoid md:grid-cols-[13rem_11rem_1fr]">
          <Name programme={programme} line={line} chosen={chosen} />
          <PairedBars line={line} />
          <Left line={line} />
        </li>
      ))}
    </ul>
  );
}

function Name({ programme, line, chosen }: { programme: string; line: ReadingLine; chosen: LinesListProps['chosen'] }) {
  const { readings: { notKnown } } = useMessages();
  return (
    <div>
      <h3 className="text-lg">
        {line.standId === null ? notKnown.stand : <RowLink href={`${pageOf(programme, 'readings', 'stands', line.standId)}${queryOf(chosen)}`}>{line.name}</RowLink>}
      </h3>
      <p className="text-sm text-ink-soft">{line.commonName ?? <Species name={line.taxon} />}</p>
    </div>
  );
}

function Left({ line: { here, planted, donors, atRisk, undecidedShare } }: { line: ReadingLine }) {
  const t = useTranslations('dashboards.line');
  return (
    <div className="tabular-nums">
      <p><strong>{t('left', { left: donors.left, came: donors.came })}</strong></p>
      <p className="text-sm text-ink-soft">{t('plants', { here, planted })} {undecidedShare !== null && undecidedShare > 0 && t('undecided', { share: percent(undecidedShare) })}</p>
      {atRisk > 0 && <p className="mt-1"><Flag tone="look">{t('atRisk', { n: atRisk })}</Flag></p>}
    </div>
  );
}
