import type { FunnelStage } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { useId } from 'react';
import { marksOf, type RateMarks, RateTrack, TICKS } from './rate-track.tsx';

interface RateTracksProps {
  readonly title: string;
  readonly description: string;
  readonly stages: readonly FunnelStage[];
  readonly nameOf: (stage: FunnelStage['stage']) => string;
}

/** Shares with both their ranges, a track a stage, from none to all. */
export function RateTracks({ title, description, stages, nameOf }: RateTracksProps) {
  const describedBy = useId();
  return (
    <div role="img" aria-label={title} aria-describedby={describedBy} className="grid max-w-xl flex-1 basis-80 gap-2 px-3">
      <p id={describedBy} hidden>
        {description}
      </p>
      {stages.map((stage) => (
        <div key={stage.stage}>
          <p className="-ml-3 text-sm font-semibold first-letter:uppercase">{nameOf(stage.stage)}</p>
          <svg className="block h-8 w-full overflow-visible">
            {TICKS.map((share) => <line key={share} x1={`${share * 100}%`} x2={`${share * 100}%`} y1="0" y2="32" className="stroke-line" />)}
            <RateTrack {...marksOf(stage)} />
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
const SIGNS: Readonly<Record<'rate' | 'open' | 'alone' | 'byDonor' | 'extremes', RateMarks>> = {
  rate: { rate: 0.5 }, open: { open: STRETCH }, alone: { alone: STRETCH }, byDonor: { byDonor: STRETCH }, extremes: { extremes: [0.25, 0.75] },
};

/** What the marks mean. */
export function RateKey({ hasExtremes }: { hasExtremes: boolean }) {
  const { readings: { stand: { spreadKey: said } } } = useMessages();
  const names = (Object.keys(SIGNS) as (keyof typeof SIGNS)[]).filter((name) => name !== 'extremes' || hasExtremes);
  return (
    <ul className="flex flex-col gap-1.5 text-sm" aria-label={said.title}>
      {names.map((name) => (
        <li key={name} className="flex items-center gap-3">
          <svg width="28" height="32" className="shrink-0" aria-hidden>
            <RateTrack {...SIGNS[name]} />
          </svg>
          {said[name]}
        </li>
      ))}
    </ul>
  );
}
