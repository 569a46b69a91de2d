import { useTranslations } from 'next-intl';
import { dayAfter, sayDay } from '../../lib/calendar.ts';
import { workdaysIn } from '../../lib/phone/workdays-in.ts';
import { MARK, PLATE } from '../../ui/form/plate.ts';
import { Choose } from '../../ui/form/choose.tsx';
import { INPUT } from '../../ui/form/input-class.ts';
import type { When } from './act.ts';
import type { FieldPack } from './use-field-pack.ts';

interface WhenLineProps extends Pick<FieldPack, 'pack' | 'author' | 'today'> {
  readonly when: When;
  readonly change: (when: When) => void;
}

/** Which day, who, and of which workday: one line, opened where it is otherwise. It holds until it is changed. */
export function WhenLine({ pack, author, today, when, change }: WhenLineProps) {
  const t = useTranslations('act');
  const ui = useTranslations('ui');
  const near = [{ day: today, words: ui('today') }, { day: dayAfter(today, -1), words: ui('yesterday') }];
  const said = near.find(({ day }) => day === when.day)?.words;
  const who = pack.people.find(({ id }) => id === when.seenBy)?.name ?? author.name;
  return (
    <details className="rounded-md border border-line bg-sheet">
      <summary className="flex min-h-14 cursor-pointer flex-wrap items-center gap-x-2 px-3 py-2">
        <span className="font-semibold">{said ? `${said}, ${sayDay(when.day)}` : sayDay(when.day)}</span>
        <span className="text-ink-soft">{t('by', { who })}</span>
        <span className="ms-auto underline">{t('otherwise')}</span>
      </summary>
      <div className="grid gap-3 border-t border-line p-3">
        <fieldset className="grid gap-2">
          <legend className="font-semibold">{t('day')}</legend>
          {near.map(({ day, words }) => (
            <label key={day} className={PLATE}>
              <input type="radio" name="day" checked={when.day === day} onChange={() => change({ ...when, day })} className={MARK} />
              {words} <span className="font-normal text-ink-soft">{sayDay(day)}</span>
            </label>
          ))}
          <input type="date" aria-label={ui('anotherDay')} max={today} value={when.day} onChange={(event) => event.target.value && change({ ...when, day: event.target.value })} className={INPUT} />
        </fieldset>
        <Choose label={t('who')} value={when.seenBy} choose={(seenBy) => change({ ...when, seenBy })} none={t('me', { name: author.name })} choices={pack.people.filter(({ id }) => id !== author.personId).map(({ id, name }) => ({ value: id, words: name }))} />
        <Choose label={t('workday')} value={when.workdayId ?? ''} choose={(id) => change({ ...when, workdayId: id || undefined })} none={t('noWorkday')} choices={workdaysIn(pack)} />
      </div>
    </details>
  );
}
