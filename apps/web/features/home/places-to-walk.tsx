import type { PlaceInTree } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Way } from '../../ui/way.tsx';
import { pageOf } from '../../lib/page-address.ts';
import { Empty } from '../../ui/empty.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

/** Benches and such that hold plants: the outermost ones with something to walk, or all benches of a house. */
export function PlacesToWalk({ programme, places }: { programme: string; places: readonly PlaceInTree[] }) {
  const said = useMessages().home;
  const t = useTranslations('home');
  const kinds = useMessages().places.kinds;
  const held = places.filter(({ kind, plantsWithin }) => plantsWithin > 0 && ['bench', 'frame', 'ground', 'site'].includes(kind));
  const nameOf = (id: string | null) => places.find((place) => place.id === id)?.name;
  return (
    <Section heading={said.walk} lead={said.walkLead}>
      {held.length === 0 ? (
        <Empty>{said.noPlaces}</Empty>
      ) : (
        <ul className="grid gap-3 sm:grid-cols-2">
          {held.map(({ id, name, kind, parentId, plantsWithin }) => (
            <li key={id}>
              <Way href={pageOf(programme, 'places', id, 'round')} className="walk-card">
                <span>
                  <span className="block text-lg font-semibold">{name}</span>
                  <span className="text-sm text-ink-soft">{nameOf(parentId) ?? kinds[kind]}</span>
                </span>
                <span className="text-right tabular-nums">{t('plants', { n: plantsWithin })}</span>
              </Way>
            </li>
          ))}
        </ul>
      )}
      <p className="mt-4"><RowLink href={pageOf(programme, 'places')}>{said.allPlaces}</RowLink></p>
    </Section>
  );
}
