interface Stretch {
  readonly lower: number;
  readonly upper: number;
}

export interface ShareMarks {
  readonly rate?: number | undefined;
  /** Where the share can still end; left out where enough is decided. */
  readonly open?: Stretch | undefined;
  readonly alone?: Stretch | undefined;
  readonly byDonor?: Stretch | undefined;
  /** Worst and best donor tree, where they are too few for a range. */
  readonly extremes?: readonly number[];
}

export const TICKS = [0, 0.25, 0.5, 0.75, 1] as const;

const at = (share: number): string => `${share * 100}%`;

/** One share between none and all: what is open as a pale band, the two ranges in it, the share as an upright stroke. */
export function ShareTrack({ rate, open, alone, byDonor, extremes = [] }: ShareMarks) {
  return (
    <>
      {open && <rect x={at(open.lower)} width={at(open.upper - open.lower)} y="1" height="30" className="fill-lichen stroke-lichen-deep print:fill-none" />}
      {alone && <line x1={at(alone.lower)} x2={at(alone.upper)} y1="10" y2="10" strokeWidth="2" className="stroke-ink" />}
      {byDonor && <line x1={at(byDonor.lower)} x2={at(byDonor.upper)} y1="22" y2="22" strokeWidth="6" className="stroke-juniper" />}
      {extremes.map((share, place) => (
        <svg key={place} x={at(share)} y="22" className="overflow-visible">
          <path d="M0-6 6 0 0 6-6 0Z" strokeWidth="1.6" className="fill-sheet stroke-juniper" />
        </svg>
      ))}
      {rate !== undefined && <line x1={at(rate)} x2={at(rate)} y1="0" y2="32" strokeWidth="2.5" className="stroke-ink" />}
    </>
  );
}
