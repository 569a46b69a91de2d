import { useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Flag } from '../../ui/flag.tsx';
import type { RoundProps } from './round-screen.tsx';
import { STOP_KEY } from './stop-head.tsx';
import type { RoundState, Where } from './round-state.ts';

/** What lies ahead, in walking order. A tap begins there. */
export function WalkList({ programme, placeId, stops, actHref, scanHref, below, state, go }: RoundProps & { state: RoundState; go: (where: Where) => void }) {
  const t = useTranslations('round');
  return (
    <section aria-labelledby="walk" className="mt-10">
      <h2 id="walk" className="text-xl">{t('list')}</h2>
      <p className="mt-3 grid"><a href={scanHref} className={buttonClass('quiet')}>{t('scan')}</a></p>
      <ol className="mt-3 grid gap-2">
        {stops.map(({ batchId, label, stage, place, placeId: here, isTray, donor }, at) => (
          <li key={batchId} className="flex flex-wrap gap-2">
            {isTray && stops[at - 1]?.placeId !== here && stops[at + 1]?.placeId === here && (
              <button type="button" onClick={() => go({ trayAt: at })} className="inline-flex min-h-14 w-full cursor-pointer items-center gap-x-2 text-left"><strong>{place}</strong> <span className="underline">{t('wholeTray')}</span></button>
            )}
            <button
              type="button"
              onClick={() => go(at)}
              className="flex min-h-14 min-w-0 flex-1 basis-48 cursor-pointer flex-wrap text-left items-center gap-x-4 gap-y-1 rounded-md border border-line bg-sheet px-3 py-2 no-underline hover:bg-lichen"
            >
              <span className="tie-label">{label}</span>
              <StageMark stage={stage} />
              <span className="text-sm text-ink-soft">{[donor, place].filter(Boolean).join(', ')}</span>
              {state.draft.answers[batchId] && <Flag tone="good">{state.draft.answers[batchId].said === 'fine' ? t('fine') : t('toldHere')}</Flag>}
            </button>
            <a href={actHref(batchId)} className={`${STOP_KEY} w-20 text-center`} aria-label={t('doItWith', { label })}>{t('doIt')}</a>
          </li>
        ))}
      </ol>
      {/* Asks the server, so it wants a signal. */}
      <p className="mt-4"><a href={`${pageOf(programme, 'without-label')}?placeId=${placeId}`} className="inline-flex min-h-14 items-center underline">{t('withoutLabel')}</a></p>
      {below}
    </section>
  );
}
