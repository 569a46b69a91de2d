import { Photo } from '@sprigline/contract';
import { NextIntlClientProvider } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { newId } from '../../lib/new-id.ts';
import { pageOf } from '../../lib/page-address.ts';
import { readVersion } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { AddPhotos } from './add-photos.tsx';
import { PhotoFigure } from './photo-figure.tsx';
import type { PhotoSubject } from './subject.ts';
import { TakeDownForm } from './take-down-form.tsx';

/** So many are shown at first, and at most. */
const [FIRST, MOST] = [8, 200];

interface PhotoSectionProps {
  readonly programme: string;
  readonly subject: PhotoSubject;
  /** What it is called: a label or a name. */
  readonly of: string;
  readonly isDesk: boolean;
  readonly today: string;
  /** A tray, of which a portrait can be taken. */
  readonly isTray?: boolean;
  /** What the page was asked for. */
  readonly asked: { readonly photos?: string; readonly takeDown?: string; readonly portrait?: string };
}

/** The time line of photos of a batch, a donor tree or a place, and a way to add some. Only the newest goes on paper, and none that shows where a wild tree stands. */
export async function PhotoSection({ programme, subject, of, isDesk, today, isTray = false, asked }: PhotoSectionProps) {
  const { noun, id } = subject;
  const isAll = asked.photos === 'all' || asked.takeDown !== undefined;
  const [{ body: photos, headers }, messages, t] = await Promise.all([
    readVersion(`${apiOf(programme, noun, id, 'photos')}?limit=${isAll ? MOST : FIRST}`, Photo.array()), getMessages(), getTranslations('photos'),
  ]);
  const { photos: said, ui } = messages;
  const [hasMore, page] = [headers.get('link') !== null, pageOf(programme, noun, id)];
  const onPaper = photos.find(({ showsWhere }) => !showsWhere)?.id;
  const going = isDesk ? photos.find((photo) => photo.id === asked.takeDown) : undefined;
  return (
    <div id="pictures" className={onPaper === undefined ? 'not-on-paper' : undefined}>
      <Section heading={said.title} lead={said.lead[noun]}>
        {going && <TakeDownForm programme={programme} subject={subject} of={of} photo={going} />}
        {photos.length === 0 && <p className="text-ink-soft">{said.none}</p>}
        <ul className="grid grid-cols-2 gap-x-4 gap-y-6 empty:hidden sm:grid-cols-3 lg:grid-cols-4">
          {photos.map((photo) => (
            <li key={photo.id} className={photo.id === onPaper ? 'list-none' : 'not-on-paper list-none'}>
              <PhotoFigure programme={programme} photo={photo} of={of} isOnPaper={photo.id === onPaper} takeDownAt={isDesk ? `${page}?takeDown=${photo.id}#pictures` : undefined} />
            </li>
          ))}
        </ul>
        {hasMore && <p className="not-on-paper mt-4">{isAll ? t('most', { n: MOST }) : <RowLink href={`${page}?photos=all#pictures`}>{said.all}</RowLink>}</p>}
        <details className="not-on-paper mt-4" open={isTray && asked.portrait !== undefined}>
          <summary className="inline-flex min-h-14 cursor-pointer items-center font-semibold underline">{said.add}</summary>
          <p className="mt-2 max-w-prose text-sm text-ink-soft">{said.care}</p>
          <NextIntlClientProvider messages={{ ui, photos: said }}>
            <AddPhotos programme={programme} subject={subject} labels={said.fields} made={{ id: newId(), noteId: newId(), writtenAt: new Date().toISOString() }}>
              <DateField name="takenOn" value={today} />
              <ProseField name="text" isOptional rows={2} hint={said.hints.text} />
              {noun === 'donor-trees' && <TickField name="showsWhere" isTicked hint={said.hints.showsWhere} />}
              {isTray && <TickField name="portrait" isTicked={asked.portrait !== undefined} />}
            </AddPhotos>
          </NextIntlClientProvider>
        </details>
      </Section>
    </div>
  );
}
