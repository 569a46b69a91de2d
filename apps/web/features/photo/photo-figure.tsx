import type { Photo } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { fittedSize } from '../../lib/picture/fitted-size.ts';
import { apiOf } from '../../lib/workplace.ts';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';

/** As the API makes the small ones. */
const SMALL_SIDE = 320;

interface PhotoFigureProps {
  readonly programme: string;
  readonly photo: Photo;
  /** What it is of, such as a label. */
  readonly of: string;
  readonly isOnPaper: boolean;
  /** Leads to taking it down, for those who may. */
  readonly takeDownAt?: string | undefined;
}

/** What is known of a photo, for somebody who does not see it. */
export function useAltOf(of: string): (photo: Photo) => string {
  const t = useTranslations('photos');
  return ({ kind, takenOn, note }) => {
    const alt = t(`alt.${kind}`, { of, day: sayDay(takenOn) });
    return note?.text ? t('alt.noted', { alt, note: note.text }) : alt;
  };
}

/** A small picture that opens the large one; under it the day, who took it, and what was noted. */
export function PhotoFigure({ programme, photo, of, isOnPaper, takeDownAt }: PhotoFigureProps) {
  const { photos: said } = useMessages();
  const t = useTranslations('photos');
  const alt = useAltOf(of)(photo);
  const { width, height } = fittedSize(photo, SMALL_SIDE);
  return (
    <figure className={isOnPaper ? '' : 'not-on-paper'}>
      <a href={apiOf(programme, 'photos', photo.id, 'large')} className="block rounded-md border-2 border-line bg-sunken hover:border-juniper">
        <img src={apiOf(programme, 'photos', photo.id, 'small')} alt={t('open', { alt })} width={width} height={height} loading={isOnPaper ? 'eager' : 'lazy'} className="aspect-4/3 h-auto w-full rounded-sm object-cover" />
      </a>
      <figcaption className="mt-2 grid justify-items-start gap-1 text-sm">
        <span>{t('by', { day: sayDay(photo.takenOn), name: photo.takenBy })}</span>
        {photo.kind === 'portrait' && <Flag>{said.portrait}</Flag>}
        {photo.showsWhere && <Flag>{said.showsWhere}</Flag>}
        {photo.note?.text && <span className="[overflow-wrap:anywhere] text-ink-soft">{photo.note.text}</span>}
        {takeDownAt && <span className="not-on-paper"><RowLink href={takeDownAt}><span aria-hidden>{said.takeDown}</span><span className="sr-only">{t('takeDownOf', { alt })}</span></RowLink></span>}
      </figcaption>
    </figure>
  );
}
