import type { DonorTree, Trip } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';

/** What to think twice about. The trip has happened, so nothing is refused. */
export function TripWarnings({ warnings, trees }: { warnings: Trip['warnings']; trees: readonly DonorTree[] }) {
  const t = useTranslations('trips.warnings');
  if (warnings.length === 0) return null;
  return (
    <ul className="mb-8 grid gap-2">
      {warnings.map(({ code, donorTreeId, cutOn, used, quota }) => (
        <li key={`${code}-${donorTreeId ?? ''}`}>
          <Flag tone="look">
            {t(code, {
              tree: trees.find(({ id }) => id === donorTreeId)?.label ?? '',
              day: cutOn ? sayDay(cutOn) : '',
              used: used ?? 0,
              quota: quota ?? 0,
              isTold: quota === undefined ? 'no' : 'yes',
            })}
          </Flag>
        </li>
      ))}
    </ul>
  );
}
