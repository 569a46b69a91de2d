import type { FunnelStage } from '@sprigline/contract';
import { type DonorDot, donorDots, type DonorFate, type DotGrid } from './donor-dots.ts';

const DOT_LOOK: Readonly<Record<DonorFate, { r: number; look: string }>> = {
  left: { r: 3.9, look: 'fill-juniper stroke-juniper' },
  gone: { r: 3.4, look: 'fill-transparent stroke-line-strong' },
  never: { r: 0.9, look: 'fill-line-strong' },
};

/** Donor trees of one stage, from the middle outwards: a dot each, or a bar where they are too many to count. */
export function DonorLane({ all, stage, grid }: { all: number; stage: FunnelStage['donors']; grid: DotGrid | undefined }) {
  if (!grid) return <DonorBar all={all} stage={stage} />;
  return (
    <svg className="block h-9 w-full" viewBox={`0 0 ${grid.columns * 10} ${grid.rows * 10}`} preserveAspectRatio="xMinYMid meet" aria-hidden>
      {donorDots(grid, all, stage.reached, stage.left).map((dot) => (
        <Dot key={`${dot.column} ${dot.row}`} cx={dot.column * 10 + 5} cy={dot.row * 10 + 5} fate={dot.fate} />
      ))}
    </svg>
  );
}

function DonorBar({ all, stage: { reached, left } }: { all: number; stage: FunnelStage['donors'] }) {
  const share = (n: number): string => `${all === 0 ? 0 : (n / all) * 100}%`;
  return (
    <svg className="block h-9 w-full overflow-visible" aria-hidden>
      <rect y="1" width={share(reached)} height="34" strokeWidth="1.25" className="fill-transparent stroke-line-strong" />
      <rect y="1" width={share(left)} height="34" strokeWidth="1.25" className="fill-juniper stroke-juniper" />
    </svg>
  );
}

export function Dot({ cx, cy, fate }: { cx: number; cy: number; fate: DonorDot['fate'] }) {
  const { r, look } = DOT_LOOK[fate];
  return <circle cx={cx} cy={cy} r={r} strokeWidth="1.2" className={look} />;
}
