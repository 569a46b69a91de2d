import { BAR, type FunnelDrawing, LANE, MIDDLE } from './funnel-geometry.ts';

const EDGE = MIDDLE + LANE;

/** The donors' side: a thread for each donor tree from stage to stage, which ends where no plant of it came further. */
export function DonorThreads({ rows, dotRadius }: FunnelDrawing) {
  return (
    <g strokeWidth="1.4">
      {rows.map(({ stage, top, dots, donorBar }, at) => {
        const next = rows[at + 1];
        return (
          <g key={stage}>
            {next && dots.slice(0, next.dots.length).map(({ x }) => <path key={x} d={`M${x} ${top + BAR / 2}V${next.top + BAR / 2}`} className="stroke-lichen-deep" />)}
            {dots.map(({ x, isLeft }) => (
              <circle key={x} cx={x} cy={top + BAR / 2} r={dotRadius} className={isLeft ? 'fill-juniper stroke-juniper' : 'fill-sheet stroke-lichen-deep'} />
            ))}
            {donorBar && (
              <>
                <rect x={EDGE} y={top} width={donorBar.reached} height={BAR} className="fill-sheet stroke-lichen-deep" />
                <rect x={EDGE} y={top} width={donorBar.left} height={BAR} className="fill-juniper" />
              </>
            )}
          </g>
        );
      })}
    </g>
  );
}
