import { useTranslations } from 'next-intl';
import type { Route } from 'next';
import { pageOf } from '../../lib/page-address.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Flag } from '../../ui/flag.tsx';
import { Way } from '../../ui/way.tsx';
import type { PlaceAnswer } from './place-answer.ts';
import { PlaceTold } from './place-told.tsx';
import type { RoundProps } from './round-screen.tsx';
import { Told } from './told.tsx';
import type { Saved } from './use-books.ts';

/** After saving: what became of each batch, and the way to mend it. */
export function DoneView({ programme, placeId, placeName, written, place }: RoundProps & { written: readonly Saved[]; place: PlaceAnswer | undefined }) {
  const t = useTranslations('round');
  const flags = useTranslations('entries.flags');
  return (
    <section aria-labelledby="done" className="mx-auto max-w-2xl">
      <div role="status" className="rounded-lg border-2 border-juniper bg-lichen p-5 text-on-lichen">
        <h1 id="done" className="text-2xl">✓ {t('done')}</h1>
        {written.length > 0 && <p className="mt-1">{t('saved', { n: written.length })}</p>}
        {place && <div className="mt-1"><strong>{placeName}</strong> <PlaceTold answer={place} /></div>}
      </div>
      <ul className="mt-4 grid gap-2">
        {written.map(({ answer, status, flags: raised }) => (
          <li key={answer.batchId} className="flex flex-wrap items-center justify-between gap-x-4 gap-y-1 rounded-md border border-line bg-sheet px-4 py-2">
            <span>
              <span className="tie-label">{answer.label}</span> <Flag tone="good">{t(status === 'refused' ? 'refused' : status)}</Flag>
              <Told answer={answer} />
              {raised.map(({ code, n }) => <span key={code} className="block text-sm">{flags(code, { n: n ?? 0 })} {t('toReview')}</span>)}
            </span>
            <Way href={`${pageOf(programme, 'batches', answer.batchId)}#history` as Route} className={buttonClass('quiet')}>{t('mend')}</Way>
          </li>
        ))}
      </ul>
      <div className="mt-6 flex flex-wrap gap-3">
        <Way href={pageOf(programme) as Route} className={buttonClass('main')}>{t('another')}</Way>
        <a href={pageOf(programme, 'places', placeId, 'round')} className={buttonClass('quiet')}>{t('again')}</a>
      </div>
    </section>
  );
}
