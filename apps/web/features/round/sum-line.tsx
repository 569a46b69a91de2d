import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { Card } from '../../ui/card.tsx';
import { Flag } from '../../ui/flag.tsx';
import { Doubts } from '../../ui/ledger/doubts.tsx';
import { useMovementWords } from '../../ui/ledger/movement-words.tsx';
import type { Answer } from './answer.ts';
import type { Heard } from './heard.ts';
import { Told } from './told.tsx';

/** Refusals that are questions: the same entry is taken once somebody says so. */
const MAY_CONFIRM = ['/problems/entry/looks-wrong', '/problems/entry/breaks-later-ones'];

interface SumLineProps {
  readonly answer: Answer;
  readonly heard: Heard | undefined;
  readonly isConfirmed: boolean;
  readonly change: () => void;
  readonly confirm: () => void;
}

/** One batch: what was tapped in, and what the books make of it. */
export function SumLine({ answer, heard, isConfirmed, change, confirm }: SumLineProps) {
  const t = useTranslations('round');
  const flags = useTranslations('entries.flags');
  const say = useMovementWords();
  const ids = Object.values(answer.ids);
  const books = heard?.batches.find(({ batchId }) => batchId === answer.batchId);
  const refused = heard?.entries.find(({ id, status }) => ids.includes(id) && status === 'refused');
  const problem = refused?.problem;
  const isQuestion = problem !== undefined && MAY_CONFIRM.includes(problem.type);

  return (
    <li>
      <Card>
        <div className="flex flex-wrap items-center justify-between gap-2">
          <span className="tie-label text-lg">{answer.label}</span>
          <button type="button" onClick={change} className={buttonClass('quiet')}>{t('change')}</button>
        </div>
        <Told answer={answer} />
        {books && (
          <div className="mt-2 border-l-4 border-lichen-deep pl-3">
            {books.before && books.before.balance !== books.after.balance && <strong className="text-lg tabular-nums">{t('balance', { before: books.before.balance, after: books.after.balance })}</strong>}
            <ul>
              {books.movements.map((movement, at) => <li key={at}>{say(movement)}</li>)}
              {books.movements.length === 0 && <li>{answer.said === 'fine' ? t('onlyNoted') : t('same')}</li>}
            </ul>
            {books.flags.map(({ code, n }) => <p key={code} className="mt-1"><Flag tone="look">{t('toReview')}</Flag> {flags(code, { n: n ?? 0 })}</p>)}
          </div>
        )}
        {problem && (
          <div className="mt-2 grid gap-2 border-l-4 border-rust pl-3">
            <p className="font-semibold text-rust">{t('refused')}: {refused?.words}</p>
            {problem.discrepancies && <Doubts doubts={problem.discrepancies} />}
            {isQuestion && !isConfirmed && <button type="button" onClick={confirm} className={buttonClass('grave')}>{t('confirm')}</button>}
          </div>
        )}
      </Card>
    </li>
  );
}
