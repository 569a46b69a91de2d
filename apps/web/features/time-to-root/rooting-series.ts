import type { RootingCurve } from '@sprigline/contract';
import type { StepSeries } from '../../ui/step-chart.tsx';

/** A curve as the chart wants it. */
export const seriesOf = ({ key, name, steps, watched }: RootingCurve): StepSeries => ({
  key, name,
  steps: steps.map(({ since, week, rooted, lower, upper }) => ({ since, at: week, share: rooted, lower, upper })),
  until: Math.max(steps.at(-1)?.week ?? 0, watched.at(-1)?.week ?? 0),
  counts: watched.map(({ week, cuttings }) => ({ at: week, n: cuttings })),
});

/** Weeks that the picture reaches; never nothing. */
export const widthOf = (curves: readonly RootingCurve[]): number => Math.max(1, ...curves.map((curve) => seriesOf(curve).until));
