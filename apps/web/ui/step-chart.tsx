import { scaleLinear } from 'd3-scale';
import { useFormatter } from 'next-intl';
import { type ShareStep, stepShape, topOf } from './step-shape.ts';

export interface StepSeries {
  readonly key: string;
  readonly name: string;
  readonly steps: readonly ShareStep[];
  /** Where its line ends. */
  readonly until: number;
  /** Numbers below the picture, under the marks they belong to. */
  readonly counts?: readonly { readonly at: number; readonly n: number }[];
}

/** Told apart by how they are broken and how strong they are, so that they are in grey too. */
const LINES = [
  { dash: undefined, width: 3, colour: 'stroke-juniper' }, { dash: '10 5', width: 3, colour: 'stroke-rust' }, { dash: '2 5', width: 3.5, colour: 'stroke-berry' },
  { dash: '12 4 2 4', width: 2.5, colour: 'stroke-ink' }, { dash: undefined, width: 1.25, colour: 'stroke-juniper' }, { dash: '5 3', width: 1.5, colour: 'stroke-rust' },
  { dash: '1 3', width: 2, colour: 'stroke-berry' }, { dash: '8 2 2 2 2 2', width: 1.5, colour: 'stroke-ink' },
] as const;
const BANDS = ['fill-juniper/15', 'fill-rust/15'] as const;
/** About so many lines lie behind the picture, at round shares. */
const HEIGHTS = 4;
/** More bands would lie on each other. */
const MOST_BANDS = BANDS.length;
const lineOf = (at: number) => LINES[at % LINES.length] ?? LINES[0];

interface StepChartProps {
  readonly title: string;
  readonly describedBy: string;
  readonly series: readonly StepSeries[];
  /** What the width stands for, above 0. */
  readonly width: number;
  readonly marks: readonly number[];
  /** What the marks below count. */
  readonly unit: string;
  /** What the numbers under the marks are of. */
  readonly countsOf?: string;
}

/** Shares that only rise, over time, with limits and with the numbers they rest on. Its table twin belongs beside it. */
export function StepChart({ title, describedBy, series, width, marks, unit, countsOf }: StepChartProps) {
  const { number } = useFormatter();
  const top = topOf(series);
  const shapes = series.map(({ steps, until }) => stepShape(steps, until, width, top));
  const heights = scaleLinear([0, top], [0, 1]).ticks(HEIGHTS);
  return (
    <div>
      {series.length > 1 && <StepKey series={series} />}
      <div role="img" aria-label={title} aria-describedby={describedBy} className="grid max-w-4xl grid-cols-[auto_1fr] gap-x-2">
        <svg className="block h-56 w-12 overflow-visible text-sm tabular-nums sm:h-72">
          {heights.map((share) => <text key={share} x="100%" y={`${100 - (share / top) * 100}%`} dy="0.35em" textAnchor="end" className="fill-ink-soft">{number(share, { style: 'percent', maximumFractionDigits: 1 })}</text>)}
        </svg>
        <svg className="block h-56 w-full overflow-visible sm:h-72" viewBox="0 0 100 100" preserveAspectRatio="none">
          {heights.map((share) => <line key={share} x1="0" x2="100" y1={100 - (share / top) * 100} y2={100 - (share / top) * 100} strokeWidth="1" vectorEffect="non-scaling-stroke" className="stroke-line" />)}
          {series.length <= MOST_BANDS && shapes.map(({ band }, at) => band && <path key={series[at]?.key} d={band} className={BANDS[at]} />)}
          {shapes.map(({ line }, at) => <path key={series[at]?.key} d={line} fill="none" strokeWidth={lineOf(at).width} strokeDasharray={lineOf(at).dash} vectorEffect="non-scaling-stroke" className={lineOf(at).colour} />)}
        </svg>
        <span />
        <Row texts={marks.map((at) => ({ at, words: number(at) }))} width={width} />
        <span />
        <p className="text-right text-sm text-ink-soft">{unit}</p>
        {countsOf && <p className="col-span-2 mt-2 text-sm text-ink-soft">{countsOf}</p>}
        {countsOf && series.map(({ key, counts = [] }, at) => (
          <div key={key} className="contents">
            <LineSample at={at} />
            <Row texts={counts.map(({ at: week, n }) => ({ at: week, words: number(n) }))} width={width} />
          </div>
        ))}
      </div>
    </div>
  );
}

function Row({ texts, width }: { texts: readonly { at: number; words: string }[]; width: number }) {
  return (
    <svg className="block h-6 w-full overflow-visible text-sm tabular-nums">
      {texts.map(({ at, words }) => <text key={at} x={`${(at / width) * 100}%`} y="1.2em" textAnchor={at === 0 ? 'start' : at > width * 0.95 ? 'end' : 'middle'} className="fill-ink-soft">{words}</text>)}
    </svg>
  );
}

/** Which line is which. */
export function StepKey({ series }: { series: readonly Pick<StepSeries, 'key' | 'name'>[] }) {
  return (
    <ul className="mb-4 flex flex-wrap gap-x-5 gap-y-1 text-sm">
      {series.map(({ key, name }, at) => <li key={key} className="flex items-center gap-2"><LineSample at={at} />{name}</li>)}
    </ul>
  );
}

function LineSample({ at }: { at: number }) {
  const { dash, width, colour } = lineOf(at);
  return <svg viewBox="0 0 44 12" width="44" height="12" className="mt-1.5 shrink-0" aria-hidden><line x1="1" x2="43" y1="6" y2="6" strokeWidth={width} strokeDasharray={dash} className={colour} /></svg>;
}
