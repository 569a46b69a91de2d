import { useTranslations } from 'next-intl';
import type { Ref } from 'react';
import { Flag } from '../../ui/flag.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';
import type { Act } from './act.ts';
import type { BatchHere } from '../../lib/phone/batch-here.ts';

interface BatchHeadProps {
  readonly ref: Ref<HTMLHeadingElement>;
  readonly batch: BatchHere;
  readonly balance: number | undefined;
  readonly rooted: number | undefined;
  /** What is being done; nothing while it is chosen. */
  readonly doing: Act | undefined;
  readonly walkHref: string;
  readonly scanHref: string;
  /** Where it is counted; nothing for what is on no walk yet. */
  readonly countHref: string | undefined;
}

const WAY = 'inline-flex min-h-14 min-w-14 items-center underline';

/** Which batch this is, where it stands, and what the books say of it with all that was logged here. */
export function BatchHead({ ref, batch: { label, stage, of, place, isNew }, balance, rooted, doing, walkHref, scanHref, countHref }: BatchHeadProps) {
  const t = useTranslations('act');
  return (
    <header className="grid gap-1">
      {!doing && (
        <nav aria-label={t('ways')} className="flex flex-wrap justify-between gap-x-4">
          <a href={walkHref} className={WAY}>{t('back')}</a>
          {countHref !== undefined && <a href={countHref} className={WAY}>{t('count')}</a>}
          <a href={scanHref} className={WAY}>{t('scan')}</a>
        </nav>
      )}
      <h1 ref={ref} id="batch" tabIndex={-1} className="flex flex-wrap items-center gap-x-3 gap-y-1 text-xl outline-none">
        <span className="tie-label">{label}</span>
        {doing ? <span>{t(`acts.${doing}`)}</span> : null}
      </h1>
      <p className="flex flex-wrap items-center gap-x-3 leading-snug"><StageMark stage={stage} /> <strong>{place}</strong> {isNew && <Flag tone="look">{t('new')}</Flag>}</p>
      {of !== '' && <p className="text-sm text-ink-soft">{of}</p>}
      {balance !== undefined && <p className="tabular-nums">{t('books', { n: balance, isRooted: rooted === undefined ? 'no' : 'yes', rooted: rooted ?? 0 })}</p>}
    </header>
  );
}
