import type { Route } from 'next';
import { useMessages, useTranslations } from 'next-intl';
import { Way } from '../../ui/way.tsx';
import type { Stop } from './places-of-batches.ts';

interface PlaceFirstProps {
  readonly places: readonly Stop[];
  /** The page's own address, narrowed to a place; without one, all of them on one page. */
  readonly toPlace: (placeId?: string) => string;
  /** Whether more stands elsewhere than was read. */
  readonly isPart: boolean;
}

/** On a phone: where one stands, before a line for every batch of the nursery makes a page that nobody scrolls through. */
export function PlaceFirst({ places, toPlace, isPart }: PlaceFirstProps) {
  const said = useMessages().bench;
  const t = useTranslations('bench');
  return (
    <nav aria-labelledby="place-first" className="lg:hidden">
      <h2 id="place-first" className="text-xl">{said.placeFirst}</h2>
      <ul className="mt-3 grid gap-2">
        {places.map(({ placeId, words, batches, plants }) => (
          <li key={placeId}>
            <Way href={toPlace(placeId) as Route} className="flex min-h-14 flex-col justify-center rounded-md border border-line bg-sheet px-4 py-2 no-underline hover:bg-lichen">
              <span className="font-semibold">{words}</span>
              <span className="text-sm text-ink-soft">{t('standsThere', { batches, plants })}</span>
            </Way>
          </li>
        ))}
        <li><Way href={toPlace() as Route} className="inline-flex min-h-14 items-center underline">{said.allOnOnePage}</Way></li>
      </ul>
      {isPart && <p className="mt-2 text-ink-soft">{said.morePlaces}</p>}
    </nav>
  );
}
