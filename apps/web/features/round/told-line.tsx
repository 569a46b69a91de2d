import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { Card } from '../../ui/card.tsx';
import { Flag } from '../../ui/flag.tsx';
import { useMovementWords } from '../../ui/ledger/movement-words.tsx';
import type { Answer } from './answer.ts';
import { summed } from './summed.ts';
import { Told } from './told.tsx';
import type { BooksOf, Whereabouts } from '../../lib/phone/use-books-here.ts';

interface ToldLineProps {
  readonly answer: Answer;
  /** Entries of the answer, corrections too. */
  readonly ids: readonly string[];
  readonly booksOf: BooksOf;
  readonly change: () => void;
  readonly actHref: string;
}

/** One batch: what was tapped in, what the books make of it, and where it is. */
export function ToldLine({ answer, ids, booksOf, change, actHref }: ToldLineProps) {
  const t = useTranslations('round');
  const flags = useTranslations('entries.flags');
  const say = useMovementWords();
  const { ahead, whereabouts } = booksOf(answer.batchId, ids);
  const movements = summed(ahead?.after.movements.filter(({ entryId }) => ids.includes(entryId)) ?? []);
  const isWithCoordinator = whereabouts.some((one) => 'decided' in one && one.decided?.how === 'given');
  const raised = ahead?.after.flags.filter(({ entryId }) => ids.includes(entryId)) ?? [];

  return (
    <li>
      <Card>
        <div className="flex flex-wrap items-center justify-between gap-2">
          <span className="tie-label text-lg">{answer.label}</span>
          <Where whereabouts={whereabouts} isKept={ids.length > 0} />
        </div>
        <Told answer={answer} />
        {isWithCoordinator && <p className="mt-1 font-semibold">{t('withCoordinator')}</p>}
        <div className="mt-2 flex flex-wrap items-center gap-x-6">
          <button type="button" onClick={change} className={buttonClass('quiet')}>{t('change')}</button>
          <a href={actHref} aria-label={t('doItWith', { label: answer.label })} className="inline-flex min-h-14 items-center underline">{t('doIt')}</a>
        </div>
        {ahead && (
          <div className="mt-2 border-l-4 border-lichen-deep pl-3">
            {ahead.before.balance !== ahead.after.balance && <strong className="text-lg tabular-nums">{t('balance', { before: ahead.before.balance, after: ahead.after.balance })}</strong>}
            <ul>
              {movements.map((movement, at) => <li key={at}>{say(movement)}</li>)}
              {movements.length === 0 && <li>{answer.said === 'fine' ? t('onlyNoted') : t('same')}</li>}
            </ul>
            {raised.map(({ code, n }) => <p key={code} className="mt-1"><Flag tone="look">{t('toReview')}</Flag> {flags(code, { n: n ?? 0 })}</p>)}
          </div>
        )}
      </Card>
    </li>
  );
}

/** The worst of its entries: one that was not taken, one that is still only here. */
function Where({ whereabouts, isKept }: { whereabouts: readonly Whereabouts[]; isKept: boolean }) {
  const t = useTranslations('round');
  if (!isKept) return <Flag tone="grave">{t('notKept')}</Flag>;
  const refused = whereabouts.find((one) => 'refusal' in one && one.refusal !== undefined);
  if (refused) return <Flag tone="grave">{t('refused')}</Flag>;
  if (whereabouts.some((one) => !('status' in one))) return <Flag tone="look">{t('onPhone')}</Flag>;
  return whereabouts.length > 0 ? <Flag tone="good">{t('inBooks')}</Flag> : null;
}
