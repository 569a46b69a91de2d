import { area, curveBumpY } from 'd3-shape';
import type { Fate, FunnelRow } from './funnel-shape.ts';

/** Told apart by how dark they are, so that they are in grey too: the darker, the better it went. */
export const FATE_LOOK: Readonly<Record<Fate, string>> = {
  goneOn: 'fill-juniper stroke-juniper',
  here: 'fill-lichen-deep stroke-lichen-deep',
  away: 'fill-lichen stroke-line-strong [stroke-dasharray:3_3]',
  lost: 'fill-transparent stroke-line-strong',
};

/** Plants of one stage, from the middle outwards. */
export function PlantLane({ row }: { row: FunnelRow }) {
  return (
    <svg className="block h-9 w-full overflow-visible" aria-hidden>
      {row.parts.map(({ fate, from, width }) => (
        <rect key={fate} x={`${from}%`} y="1" width={`${width}%`} height="34" strokeWidth="1.25" className={FATE_LOOK[fate]} />
      ))}
    </svg>
  );
}

/** How what went on from one bar comes to the next; lies behind the row, from its bar to the bar of the next. */
export function PlantJoint({ joint: { above, below } }: Pick<FunnelRow, 'joint'>) {
  const ends: [number, number][] = [[0, above], [100, below]];
  const path = area<[number, number]>().y(([y]) => y).x0(100).x1(([, width]) => 100 - width).curve(curveBumpY)(ends);
  if (above === 0 || !path) return null;
  return (
    <div className="absolute top-12 -bottom-10 left-0 grid w-full grid-cols-2 gap-x-2" aria-hidden>
      <svg className="size-full" viewBox="0 0 100 100" preserveAspectRatio="none">
        <path d={path} className="fill-lichen print:fill-[#ddd]" />
      </svg>
    </div>
  );
}
