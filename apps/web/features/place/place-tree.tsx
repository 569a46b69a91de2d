import type { PlaceInTree } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Way } from '../../ui/way.tsx';
import { inRuns } from './tray-runs.ts';

/** Deeper ones stand further in; past the fourth step they stay. */
const INDENT = ['', 'ml-5', 'ml-10', 'ml-16', 'ml-20'] as const;

/** More trays than these are opened when somebody wants them. */
const SHOWN = 12;

/** Places in walking order, with what stands in each. Trays of a bench are folded where nothing stands in them, or they are many. */
export function PlaceTree({ programme, places }: { programme: string; places: readonly PlaceInTree[] }) {
  const t = useTranslations('places');
  const top = Math.min(...places.map(({ depth }) => depth));
  const row = (place: PlaceInTree) => <PlaceRow programme={programme} place={place} isTop={place.depth === top} />;
  const indent = ({ depth }: PlaceInTree) => INDENT[Math.min(depth - top, 4)];
  return (
    <ul className="grid gap-2">
      {inRuns(places).map((run) => {
        const [first] = run;
        const plants = run.reduce((sum, { plantsWithin }) => sum + plantsWithin, 0);
        if (first.kind !== 'tray' || first.depth === top || (plants > 0 && run.length <= SHOWN)) {
          return run.map((place) => <li key={place.id} className={indent(place)}>{row(place)}</li>);
        }
        return (
          <li key={first.id} className={indent(first)}>
            <details>
              <summary className="flex min-h-14 cursor-pointer items-center gap-4 rounded-md border border-line px-4 before:content-['▸'] hover:bg-lichen in-open:before:content-['▾']">
                {t('trays', { n: run.length })} <span className="ml-auto tabular-nums">{t('plants', { n: plants })}</span>
              </summary>
              <ul className="mt-2 grid gap-2">{run.map((place) => <li key={place.id}>{row(place)}</li>)}</ul>
            </details>
          </li>
        );
      })}
    </ul>
  );
}

function PlaceRow({ programme, place: { id, name, kind, plantsWithin }, isTop }: { programme: string; place: PlaceInTree; isTop: boolean }) {
  const said = useMessages().places;
  const t = useTranslations('places');
  return (
    <div className="flex overflow-hidden rounded-md border border-line bg-sheet">
      <Way href={pageOf(programme, 'places', id)} className="flex min-h-14 min-w-0 grow flex-wrap items-center justify-between gap-x-4 px-4 py-2 no-underline hover:bg-lichen">
        <span className="min-w-0">
          <span className={isTop ? 'text-lg font-semibold' : 'font-semibold'}>{name}</span> <span className="text-sm text-ink-soft">{said.kinds[kind]}</span>
        </span>
        <span className="tabular-nums">{t('plants', { n: plantsWithin })}</span>
      </Way>
      {plantsWithin > 0 && (
        <Way
          href={pageOf(programme, 'places', id, 'round')}
          aria-label={t('walkHere', { name })}
          className="not-on-paper flex min-h-14 min-w-20 items-center justify-center border-l border-line bg-lichen px-4 font-semibold text-on-lichen no-underline hover:bg-lichen-deep"
        >
          {said.walk}
        </Way>
      )}
    </div>
  );
}
