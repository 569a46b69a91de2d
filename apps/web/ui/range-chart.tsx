import { scaleLinear } from 'd3-scale';
import { useFormatter } from 'next-intl';

export interface RangePoint {
  readonly at: number;
  readonly expected: number;
  readonly lower: number;
  readonly upper: number;
}

interface RangeChartProps {
  readonly title: string;
  readonly describedBy: string;
  /** Two or more, in order. */
  readonly points: readonly RangePoint[];
  readonly marks: readonly { readonly at: number; readonly words: string }[];
}

/** What is expected over time, with limits. Its table twin belongs beside it. */
export function RangeChart({ title, describedBy, points, marks }: RangeChartProps) {
  const { number } = useFormatter();
  const [from, until] = [points[0]?.at ?? 0, points.at(-1)?.at ?? 1];
  const x = scaleLinear([from, until], [0, 100]);
  const y = scaleLinear([0, Math.max(1, ...points.map(({ upper }) => upper))], [100, 0]).nice(4);
  const corner = (at: number, n: number): string => `${x(at).toFixed(2)},${y(n).toFixed(2)}`;
  const band = [...points.map(({ at, upper }) => corner(at, upper)), ...points.toReversed().map(({ at, lower }) => corner(at, lower))];
  const heights = y.ticks(4).filter(Number.isInteger);
  return (
    <div role="img" aria-label={title} aria-describedby={describedBy} className="grid max-w-4xl grid-cols-[auto_1fr] gap-x-2">
      <svg className="block h-48 w-12 overflow-visible text-sm tabular-nums sm:h-60">
        {heights.map((plants) => <text key={plants} x="100%" y={`${y(plants)}%`} dy="0.35em" textAnchor="end" className="fill-ink-soft">{number(plants)}</text>)}
      </svg>
      <svg className="block h-48 w-full overflow-visible sm:h-60" viewBox="0 0 100 100" preserveAspectRatio="none">
        {heights.map((plants) => <line key={plants} x1="0" x2="100" y1={y(plants)} y2={y(plants)} strokeWidth="1" vectorEffect="non-scaling-stroke" className="stroke-line" />)}
        <path d={`M${band.join('L')}Z`} strokeWidth="1" strokeDasharray="4 3" vectorEffect="non-scaling-stroke" className="fill-juniper/15 stroke-line-strong" />
        <path d={`M${points.map(({ at, expected }) => corner(at, expected)).join('L')}`} fill="none" strokeWidth="3" vectorEffect="non-scaling-stroke" className="stroke-juniper" />
      </svg>
      <span />
      <svg className="block h-8 w-full overflow-visible text-sm">
        {marks.map(({ at, words }, index) => <text key={at} x={`${x(at)}%`} y="1.3em" textAnchor={x(at) < 10 ? 'start' : x(at) > 90 ? 'end' : 'middle'} className={`fill-ink-soft ${index % 3 === 0 ? '' : 'max-sm:hidden'}`}>{words}</text>)}
      </svg>
    </div>
  );
}
