import type { Place } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';

/** What can be done with a place: everybody walks it, the desk arranges it. */
export function PlaceActs({ programme, place, isDesk }: { programme: string; place: Place; isDesk: boolean }) {
  const { places: said, climate, labels, lostLabel, treatments } = useMessages();
  const to = (...parts: string[]) => pageOf(programme, 'places', place.id, ...parts);
  const isSite = place.kind === 'site' || place.kind === 'plot';
  return (
    <>
      <ButtonLink href={to('round')}>{said.startRound}</ButtonLink>
      {isSite && <ButtonLink look="quiet" href={to('check')}>{said.checkAll}</ButtonLink>}
      <ButtonLink look="quiet" href={`${pageOf(programme, 'treatments', 'new')}?placeId=${place.id}`}>{treatments.add}</ButtonLink>
      <ButtonLink look="quiet" href={`${pageOf(programme, 'labels', 'print')}?of=batches&placeId=${place.id}`}>{labels.print}</ButtonLink>
      {!isSite && <ButtonLink look="quiet" href={to('climate')}>{climate.open}</ButtonLink>}
      <ButtonLink look="quiet" href={`${pageOf(programme, 'without-label')}?placeId=${place.id}`}>{lostLabel.title}</ButtonLink>
      {isDesk && !isSite && (
        <>
          {place.kind === 'tray' ? <ButtonLink look="quiet" href={to('fill')}>{said.fill}</ButtonLink> : <ButtonLink look="quiet" href={`${pageOf(programme, 'places', 'new')}?in=${place.id}`}>{said.addWithin}</ButtonLink>}
          <ButtonLink look="quiet" href={to('move')}>{said.move}</ButtonLink>
          <ButtonLink look="quiet" href={to('edit')}>{said.change}</ButtonLink>
        </>
      )}
    </>
  );
}
