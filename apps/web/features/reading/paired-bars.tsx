import type { ReadingLine } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { barWidths } from './bar-widths.ts';

/** Plants to the left and donor trees to the right of a middle line, a pair of bars a stage. */
export function PairedBars({ line }: { line: ReadingLine }) {
  const t = useTranslations('dashboards.line');
  const stage = useTranslations('words.stage');
  const says = line.stages.map((at) => t('stageSays', { stage: stage(at.stage), plants: at.plants, donors: at.donors })).join('; ');
  return (
    <svg role="img" aria-label={says} className="block h-11 w-full max-w-56" viewBox="0 0 100 44" preserveAspectRatio="none">
      {barWidths(line.stages).map(({ plants, donors }, at) => (
        <g key={at}>
          <rect x={49.5 - plants} y={at * 11 + 1} width={plants} height="9" className="fill-juniper" />
          <rect x="50.5" y={at * 11 + 1} width={donors} height="9" className="fill-lichen-deep" />
        </g>
      ))}
      <line x1="50" x2="50" y1="0" y2="44" strokeWidth="1" vectorEffect="non-scaling-stroke" className="stroke-line-strong" />
    </svg>
  );
}
