import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { type Dead, deadIn } from './answer.ts';

/** What the eye sees, in the words of the bench; a diagnosis is for somebody else. */
export const CAUSES = ['brown', 'black', 'fluff', 'chewed', 'pulled', 'bark', 'frosted', 'unclear'] as const;

interface DeadPanelProps {
  readonly dead: Dead;
  readonly cause: string;
  readonly choose: (cause: string) => void;
}

/** The dead by cause: a tap marks the cause, the keys say how many. */
export function DeadPanel({ dead, cause, choose }: DeadPanelProps) {
  const t = useTranslations('round');
  const words = useTranslations('entries.causes');
  return (
    <div role="group" aria-labelledby="dead" className="grid gap-2">
      <h2 id="dead" className="sr-only">{t('deadTitle')}</h2>
      <div className="grid grid-cols-2 gap-2">
        {CAUSES.map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={one === cause}
            onClick={() => choose(one)}
            className={`flex min-h-14 cursor-pointer touch-manipulation items-center justify-between gap-2 rounded-md border-2 px-3 text-left leading-tight ${one === cause ? 'border-juniper bg-lichen font-semibold text-on-lichen shadow-[inset_0_-4px_0_var(--juniper)]' : 'border-line-strong bg-sheet'}`}
          >
            {words(one)}
            <span className="text-xl tabular-nums">{dead[one] || ''}</span>
          </button>
        ))}
      </div>
      <p className="text-sm leading-tight text-ink-soft">{t('deadHint')}</p>
    </div>
  );
}

/** At the thumb: back to the other numbers of the batch. */
export function DeadBar({ dead, done }: { dead: Dead; done: () => void }) {
  const t = useTranslations('round');
  return (
    <div className="sticky bottom-0 -mx-4 flex border-t border-line bg-paper px-4 py-2">
      <button type="button" onClick={done} className={`${buttonClass('main')} min-h-16 flex-1 text-lg`}>{t('deadDone', { n: deadIn(dead) })}</button>
    </div>
  );
}
