import type { PlaceInTree } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Way } from '../../ui/way.tsx';
import { pageOf } from '../../lib/page-address.ts';

/** Deeper ones stand further in; past the fourth step they stay. */
const INDENT = ['', 'ml-5', 'ml-10', 'ml-16', 'ml-20'] as const;

/** Places in walking order, with what stands in each. */
export function PlaceTree({ programme, places }: { programme: string; places: readonly PlaceInTree[] }) {
  const said = useMessages().places;
  const t = useTranslations('places');
  const top = Math.min(...places.map(({ depth }) => depth));
  return (
    <ul className="grid gap-2">
      {places.map(({ id, name, kind, depth, plantsWithin }) => (
        <li key={id} className={`${INDENT[Math.min(depth - top, 4)]} flex overflow-hidden rounded-md border border-line bg-sheet`}>
          <Way href={pageOf(programme, 'places', id)} className="flex min-h-14 min-w-0 grow flex-wrap items-center justify-between gap-x-4 px-4 py-2 no-underline hover:bg-lichen">
            <span className="min-w-0">
              <span className={depth === top ? 'text-lg font-semibold' : 'font-semibold'}>{name}</span> <span className="text-sm text-ink-soft">{said.kinds[kind]}</span>
            </span>
            <span className="tabular-nums">{t('plants', { n: plantsWithin })}</span>
          </Way>
          {plantsWithin > 0 && (
            <Way
              href={pageOf(programme, 'places', id, 'round')}
              aria-label={t('walkHere', { name })}
              className="flex min-h-14 min-w-20 items-center justify-center border-l border-line bg-lichen px-4 font-semibold text-on-lichen no-underline hover:bg-lichen-deep"
            >
              {said.walk}
            </Way>
          )}
        </li>
      ))}
    </ul>
  );
}
