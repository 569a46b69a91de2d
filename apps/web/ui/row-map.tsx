import type { Box } from '../lib/tray-rows.ts';

interface RowMapProps {
  /** Of the picture under the outlines, or of the bare map. */
  readonly width: number;
  readonly height: number;
  readonly picture?: string | undefined;
  readonly outlines: readonly { readonly key: string; readonly name: string; readonly box: Box; readonly isMarked?: boolean }[];
}

/** Outlines with their names, over a picture or on bare ground. What it shows is told in words and buttons beside it. */
export function RowMap({ width, height, picture, outlines }: RowMapProps) {
  const [x, y] = [width / 100, height / 100];
  const line = Math.max(width, height) / 320;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} aria-hidden className="block h-auto w-full rounded-md border-2 border-line bg-sunken">
      {picture && <image href={picture} width={width} height={height} />}
      {outlines.map(({ key, name, box, isMarked = false }) => {
        const [left, top, wide, high] = [box.x * x, box.y * y, box.width * x, box.height * y];
        const size = Math.min(wide, high, Math.max(width, height) / 14) * 0.55;
        const tag = { x: left + line * 2, y: top + line * 2, width: size * (0.7 + 0.62 * name.length), height: size * 1.35 };
        return (
          <g key={key}>
            <rect x={left} y={top} width={wide} height={high} fill="none" strokeWidth={line * 3} className="stroke-sheet" />
            <rect x={left} y={top} width={wide} height={high} strokeWidth={line} className={isMarked ? 'fill-juniper/30 stroke-ink' : 'fill-none stroke-ink'} />
            <rect {...tag} rx={size / 4} strokeWidth={line / 2} className="fill-sheet stroke-ink" />
            <text x={tag.x + tag.width / 2} y={tag.y + tag.height / 2} dy="0.35em" textAnchor="middle" fontSize={size} className="fill-ink font-semibold">{name}</text>
          </g>
        );
      })}
    </svg>
  );
}
