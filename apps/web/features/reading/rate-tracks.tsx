import type { FunnelStage } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import type { ShareMarks } from '../../ui/share-track.tsx';
import { ShareKey, ShareTracks } from '../../ui/share-tracks.tsx';

interface RateTracksProps {
  readonly title: string;
  readonly description: string;
  readonly stages: readonly FunnelStage[];
  readonly nameOf: (stage: FunnelStage['stage']) => string;
}

const marksOf = ({ survival, wilson, byDonor }: FunnelStage): ShareMarks => ({
  rate: survival?.rate,
  open: survival?.needsRange ? survival.range : undefined,
  alone: wilson,
  byDonor: byDonor?.kind === 'interval' ? byDonor : undefined,
  extremes: byDonor?.kind === 'best-and-worst' ? [byDonor.worst.rate, byDonor.best.rate] : [],
});

/** Shares with both their ranges, a track a stage, from none to all. */
export function RateTracks({ title, description, stages, nameOf }: RateTracksProps) {
  return <ShareTracks title={title} description={description} rows={stages.map((stage) => ({ key: stage.stage, name: nameOf(stage.stage), marks: marksOf(stage) }))} />;
}

/** What the marks mean. */
export function RateKey({ hasExtremes }: { hasExtremes: boolean }) {
  const { readings: { stand: { spreadKey: said } } } = useMessages();
  return <ShareKey title={said.title} said={said} signs={hasExtremes ? ['rate', 'open', 'alone', 'byDonor', 'extremes'] : ['rate', 'open', 'alone', 'byDonor']} />;
}
