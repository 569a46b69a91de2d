import type { Place, PlaceInTree } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Facts } from '../../ui/facts.tsx';

interface PlaceFactsProps {
  readonly place: Place;
  /** The same place in the tree, with what stands in it; nothing once it is closed. */
  readonly here: PlaceInTree | undefined;
  readonly partner: string | null;
}

export function PlaceFacts({ place, here, partner }: PlaceFactsProps) {
  const { fields } = useMessages().places;
  return (
    <Facts
      facts={[
        { term: fields.plantsWithin, says: here?.plantsWithin },
        ...(place.kind === 'tray' ? [{ term: fields.rows, says: place.rows }] : []),
        ...(partner ? [{ term: fields.partnerId, says: partner }] : []),
        ...(place.note ? [{ term: fields.note, says: place.note }] : []),
        ...(place.closedOn ? [{ term: fields.closedOn, says: sayDay(place.closedOn) }] : []),
      ]}
    />
  );
}
