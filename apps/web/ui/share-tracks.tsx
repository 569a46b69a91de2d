import { useId } from 'react';
import { type ShareMarks, ShareTrack, TICKS } from './share-track.tsx';

export interface TrackRow {
  readonly key: string;
  readonly name: string;
  readonly marks: ShareMarks;
}

/** Shares with their ranges, a track a row, from none to all. */
export function ShareTracks({ title, description, rows }: { title: string; description: string; rows: readonly TrackRow[] }) {
  const describedBy = useId();
  return (
    <div role="img" aria-label={title} aria-describedby={describedBy} className="grid max-w-xl flex-1 basis-80 gap-2 px-3">
      <p id={describedBy} hidden>
        {description}
      </p>
      {rows.map(({ key, name, marks }) => (
        <div key={key}>
          <p className="-ml-3 text-sm font-semibold first-letter:uppercase">{name}</p>
          <svg className="block h-8 w-full overflow-visible">
            {TICKS.map((share) => <line key={share} x1={`${share * 100}%`} x2={`${share * 100}%`} y1="0" y2="32" className="stroke-line" />)}
            <ShareTrack {...marks} />
          </svg>
        </div>
      ))}
      <p className="-mx-3 flex justify-between text-sm text-ink-soft tabular-nums">
        {TICKS.map((share) => <span key={share} className="w-12 first:text-left last:text-right text-center">{share * 100}&nbsp;%</span>)}
      </p>
    </div>
  );
}

const STRETCH = { lower: 0.05, upper: 0.95 };
const SIGNS: Readonly<Record<'rate' | 'open' | 'alone' | 'byDonor' | 'extremes', ShareMarks>> = {
  rate: { rate: 0.5 }, open: { open: STRETCH }, alone: { alone: STRETCH }, byDonor: { byDonor: STRETCH }, extremes: { extremes: [0.25, 0.75] },
};
export type ShareSign = keyof typeof SIGNS;

/** What the marks mean. */
export function ShareKey({ title, signs, said }: { title: string; signs: readonly ShareSign[]; said: Readonly<Record<ShareSign, string>> }) {
  return (
    <ul className="flex flex-col gap-1.5 text-sm" aria-label={title}>
      {signs.map((name) => (
        <li key={name} className="flex items-center gap-3">
          <svg width="28" height="32" className="shrink-0" aria-hidden>
            <ShareTrack {...SIGNS[name]} />
          </svg>
          {said[name]}
        </li>
      ))}
    </ul>
  );
}
