import type { RootingCurves } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { useId } from 'react';
import { HowWorked } from '../../ui/how-worked.tsx';
import { More } from '../../ui/more.tsx';
import { StepChart } from '../../ui/step-chart.tsx';
import { rootingSentence } from './rooting-sentence.ts';
import { RootingTable } from './rooting-table.tsx';
import { seriesOf, widthOf } from './rooting-series.ts';

/** How long cuttings take to root: sentence, curves, the numbers they rest on, table twin, and how it was worked out. */
export function RootingFigure({ curves: { groups, inAll }, csv, isNamed = groups.length > 1 }: { curves: RootingCurves; csv: string; isNamed?: boolean }) {
  const { timeToRoot: said } = useMessages();
  const t = useTranslations('timeToRoot');
  const describedBy = useId();
  const drawn = groups.filter(({ steps }) => steps.length > 0);
  const methods = [...new Set(drawn.map(({ method }) => method))];
  if (groups.length === 0) return <p className="text-ink-soft">{said.nothing}</p>;
  return (
    <figure>
      <figcaption id={describedBy} className="mb-4 max-w-prose">
        {groups.map((curve) => {
          const sentence = rootingSentence(t, curve);
          return <p key={curve.key} className="mb-2">{isNamed ? t('named', { name: curve.name, sentence }) : sentence}</p>;
        })}
        {drawn.some(({ limitsBy, rooted }) => limitsBy === 'cuttings' && rooted > 0) && <p className="text-ink-soft">{said.narrow}</p>}
        {inAll > groups.length && <p className="text-ink-soft">{t('more', { shown: groups.length, n: inAll })}</p>}
      </figcaption>
      {drawn.length > 0 && (
        <>
          <StepChart title={said.title} describedBy={describedBy} series={drawn.map(seriesOf)} width={widthOf(drawn)} marks={longest(drawn).map(({ week }) => week)} unit={said.unit} countsOf={said.counts} />
          <div className="mt-4 text-sm">
            <More words={said.table.open}><RootingTable curves={drawn} isNamed={isNamed} /></More>
            {methods.map((method) => <HowWorked key={method} said={said.worked[method]} />)}
            {drawn.some(({ isConverged }) => !isConverged) && <p className="max-w-prose text-ink-soft">{said.worked.unsettled}</p>}
            <a href={csv} className="not-on-paper inline-flex min-h-8 items-center underline">{said.csv}</a>
          </div>
        </>
      )}
    </figure>
  );
}

/** The marks of the curve that goes furthest. */
const longest = (curves: RootingCurves['groups']): RootingCurves['groups'][number]['watched'] =>
  curves.reduce<RootingCurves['groups'][number]['watched']>((most, { watched }) => ((watched.at(-1)?.week ?? 0) > (most.at(-1)?.week ?? 0) || most.length === 0 ? watched : most), []);
