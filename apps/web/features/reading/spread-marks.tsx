import type { SpreadRow } from './spread-geometry.ts';

/** The marks of one line: what is open as a pale band, the two ranges under it, the share as an upright stroke. */
export function SpreadMarks({ rate, open, alone, byDonor, extremes }: Omit<SpreadRow, 'stage' | 'top'>) {
  return (
    <>
      {open && <rect x={open.from} y="24" width={Math.max(1, open.to - open.from)} height="26" className="fill-lichen stroke-lichen-deep print:fill-none" />}
      {alone && <path d={`M${alone.from} 32H${alone.to}`} strokeWidth="2" className="stroke-ink" />}
      {byDonor && <path d={`M${byDonor.from} 42H${byDonor.to}`} strokeWidth="6" className="stroke-juniper" />}
      {extremes.map((x, at) => <path key={at} d={`M${x} 37l5 5-5 5-5-5Z`} strokeWidth="1.6" className="fill-sheet stroke-juniper" />)}
      {rate !== undefined && <path d={`M${rate} 25V49`} strokeWidth="2.4" className="stroke-ink" />}
    </>
  );
}
