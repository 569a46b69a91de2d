import { useTranslations } from 'next-intl';
import { type MouseEvent, useEffect, useRef } from 'react';
import { buttonClass } from '../../ui/button-class.ts';
import { Card } from '../../ui/card.tsx';
import { DoneView } from './done-view.tsx';
import { PlaceTold } from './place-told.tsx';
import type { RoundProps } from './round-screen.tsx';
import type { RoundState, RoundStep } from './round-state.ts';
import { SumLine } from './sum-line.tsx';
import { useBooks } from './use-books.ts';

interface SumsViewProps extends RoundProps {
  readonly state: RoundState;
  readonly step: (next: RoundStep) => void;
}

/** What the books make of the round before it is in them; then, line by line, what became of it. */
export function SumsView(props: SumsViewProps) {
  const { stops, state: { draft }, step } = props;
  const t = useTranslations('round');
  const books = useBooks(props);
  const top = useRef<HTMLHeadingElement>(null);
  useEffect(() => top.current?.focus(), []);

  const answers = Object.values(draft.answers);
  const { heard, problem, isBusy, isUnheard, written, confirmed } = books;
  const hasNone = answers.length === 0 && !draft.place;
  if ((written.length > 0 || books.placeWritten) && hasNone) return <DoneView {...props} written={written} place={books.placeWritten} />;

  function change(batchId: string) {
    const at = stops.findIndex((stop) => stop.batchId === batchId);
    if (at !== -1) step({ step: 'go', where: at });
  }

  return (
    <section aria-labelledby="sums" className="mx-auto max-w-2xl">
      <h1 ref={top} id="sums" tabIndex={-1} className="text-2xl outline-none">{t('sums')}</h1>
      <div className="row-of-holes mt-4 mb-3" aria-hidden />
      <p className="text-ink-soft">{t('sumsLead', { n: answers.length, skipped: Math.max(0, stops.length - answers.length - written.length) })}</p>
      <ul className="mt-3 grid gap-3">
        {draft.place && (
          <li>
            <Card>
              <div className="flex flex-wrap items-center justify-between gap-2">
                <strong className="text-lg">{props.placeName}</strong>
                <button type="button" onClick={() => step({ step: 'go', where: 'place' })} className={buttonClass('quiet')}>{t('change')}</button>
              </div>
              <PlaceTold answer={draft.place} />
            </Card>
          </li>
        )}
        {answers.map((answer) => (
          <SumLine key={answer.batchId} answer={answer} heard={heard} isConfirmed={confirmed.has(answer.batchId)} change={() => change(answer.batchId)} confirm={() => books.confirm(answer)} />
        ))}
      </ul>
      <div className="sticky bottom-0 -mx-4 mt-4 border-t border-line bg-paper px-4 py-2">
        {/* At the thumb, where the eye is when saving: always there, so that what appears in it is read out. */}
        <div role="status" className="grid gap-2 empty:hidden [&>p]:mb-2">
          {isBusy && <p>{books.wasSaving ? t('saving') : t('asking')}</p>}
          {isUnheard && <p className="rounded-md border-2 border-on-straw bg-straw p-3 font-semibold text-on-straw">{books.wasSaving ? t('notSent') : t('unheard')}</p>}
          {problem && <p className="rounded-md border-2 border-rust bg-rust-wash p-3 text-rust">{problem}</p>}
          {written.length > 0 && answers.length > 0 && <p className="font-semibold">{t('saved', { n: written.length })} {t('left', { n: answers.length })}</p>}
        </div>
        <div className="flex gap-2">
          <button type="button" onClick={() => step({ step: 'go', where: stops.length - 1 })} className={`${buttonClass('quiet')} min-h-16`}>{t('back')}</button>
          <Save isBusy={isBusy && books.wasSaving} words={isUnheard ? t('sendAgain') : t('save')} isEmpty={hasNone} save={books.save} />
        </div>
      </div>
    </section>
  );
}

function Save({ isBusy, words, isEmpty, save }: { isBusy: boolean; words: string; isEmpty: boolean; save: () => void }) {
  // Pressable all the while: ids keep a second press from writing twice.
  const press = (event: MouseEvent) => { event.preventDefault(); if (!isBusy && !isEmpty) save(); };
  return <button type="button" aria-disabled={isBusy || isEmpty} onClick={press} className={`${buttonClass('main')} min-h-16 flex-1 text-lg`}>{words}</button>;
}
