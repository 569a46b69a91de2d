import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { Card } from '../../ui/card.tsx';
import { useNewHeading } from '../../ui/use-new-heading.ts';
import { PlaceTold } from './place-told.tsx';
import type { RoundProps } from './round-screen.tsx';
import { ToldLine } from './told-line.tsx';
import type { BooksOf } from '../../lib/phone/use-books-here.ts';
import type { Walk } from './use-round.ts';

interface ToldViewProps extends RoundProps {
  readonly walk: Walk;
  readonly booksOf: BooksOf;
}

/** What was told on this round, what the books make of it, and where it is: on this phone, or in the books. */
export function ToldView({ stops, placeName, homeHref, actHref, today, walk: { state: { draft }, step }, booksOf }: ToldViewProps) {
  const t = useTranslations('round');
  const top = useNewHeading();
  const answers = Object.values(draft.answers);
  // What could not be kept has to be told once more.
  const left = stops.findIndex(({ batchId }) => !draft.answers[batchId] || !draft.kept[batchId]);

  function change(batchId: string) {
    const at = stops.findIndex((stop) => stop.batchId === batchId);
    if (at !== -1) step({ step: 'go', where: at });
  }

  return (
    <section aria-labelledby="told" className="mx-auto max-w-2xl">
      <h1 ref={top} id="told" tabIndex={-1} className="text-2xl outline-none">{t('tellings')}</h1>
      <div className="row-of-holes mt-4 mb-3" aria-hidden />
      <p className="text-ink-soft">{t('tellingsLead', { n: answers.length, skipped: Math.max(0, stops.length - answers.length) })}</p>
      <ul className="mt-3 grid gap-3">
        {draft.place && (
          <li>
            <Card>
              <div className="flex flex-wrap items-center justify-between gap-2">
                <strong className="text-lg">{placeName}</strong>
                <button type="button" onClick={() => step({ step: 'go', where: 'place' })} className={buttonClass('quiet')}>{t('change')}</button>
              </div>
              <PlaceTold answer={draft.place} />
            </Card>
          </li>
        )}
        {answers.map((answer) => (
          <ToldLine key={answer.batchId} answer={answer} ids={draft.kept[answer.batchId]?.ids ?? []} booksOf={booksOf} change={() => change(answer.batchId)} actHref={actHref(answer.batchId)} />
        ))}
      </ul>
      <div className="sticky bottom-0 -mx-4 mt-4 flex gap-2 border-t border-line bg-paper px-4 py-2">
        {left === -1
          ? <button type="button" onClick={() => step({ step: 'anew', day: today })} className={`${buttonClass('quiet')} min-h-16`}>{t('again')}</button>
          : <button type="button" onClick={() => step({ step: 'go', where: left })} className={`${buttonClass('quiet')} min-h-16`}>{t('goBack')}</button>}
        <a href={homeHref} className={`${buttonClass('main')} min-h-16 flex-1 text-lg`}>{t('another')}</a>
      </div>
    </section>
  );
}
