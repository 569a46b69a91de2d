import { useMessages, useTranslations } from 'next-intl';
import { INCIDENT_LOOK, LAYER_LOOK } from './time-chart.tsx';
import { LAYERS } from './time-shape.ts';

/** What the layers mean, from the top down as they lie. */
export function TimeKey({ hasIncidents }: { hasIncidents: boolean }) {
  const { dashboards: { time: said } } = useMessages();
  const stage = useTranslations('words.stage');
  return (
    <ul aria-label={said.key} className="mb-4 flex flex-wrap gap-x-5 gap-y-1 text-sm">
      {LAYERS.toReversed().map((layer) => (
        <li key={layer} className="flex items-center gap-1.5">
          <svg viewBox="0 0 20 20" width="20" height="20" className="shrink-0" aria-hidden><rect x="1" y="3" width="18" height="14" strokeWidth="1.25" className={`stroke-line-strong ${LAYER_LOOK[layer]}`} /></svg>
          {stage(layer)}
        </li>
      ))}
      {hasIncidents && (
        <li className="flex items-center gap-1.5">
          <svg viewBox="0 0 20 20" width="20" height="20" className="shrink-0" aria-hidden><rect x="5" y="1" width="10" height="18" strokeWidth="1.5" strokeDasharray="4 2" className={INCIDENT_LOOK} /></svg>
          {said.incident}
        </li>
      )}
    </ul>
  );
}
