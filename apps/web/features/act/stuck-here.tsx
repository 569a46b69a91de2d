import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Where } from './own-acts.tsx';
import { stuckHere, traysStuck } from './stick.ts';
import { TrayPortrait } from './tray-portrait.tsx';
import type { FieldPackNow } from './use-field-pack.ts';

interface StuckHereProps {
  readonly programme: string;
  readonly found: FieldPackNow;
  readonly undo: (entry: EntryToSend, about: string) => void;
}

/** What was stuck on this phone, where it is, how to take it back, and a portrait of each tray that was filled. */
export function StuckHere({ programme, found: { own, author, pack: { bundles = [], places } }, undo }: StuckHereProps) {
  const t = useTranslations('act');
  const lines = stuckHere(own);
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby="stuck-here">
      <h2 id="stuck-here" className="text-lg">{t('stick.yours')}</h2>
      <ul className="mt-2 grid gap-2">
        {lines.map(({ item, entry }) => {
          const { n, bundleId, placeId, rows } = entry.saying;
          const donor = bundles.find(({ id }) => id === bundleId)?.donorTree ?? item.about;
          const tray = places.find(({ id }) => id === placeId)?.name ?? '';
          return (
            <li key={item.id} className="flex flex-wrap items-center justify-between gap-2 rounded-md border border-line bg-sheet px-3 py-2">
              <span className="min-w-0">
                <strong>{t('stick.line', { n, donor, tray })}</strong> <span className="text-sm text-ink-soft">{[rows && t('stick.rowsSaid', { rows, n: rows.includes('-') ? 2 : 1 }), sayDay(entry.observedOn)].filter(Boolean).join(', ')}</span> <Where item={item} />
              </span>
              <button type="button" onClick={() => undo(entry, donor)} className={buttonClass('quiet')}>{t('takeBack')}</button>
            </li>
          );
        })}
      </ul>
      <div className="mt-4 grid gap-2 empty:hidden">
        {traysStuck(lines, places).map(({ tray, day }) => <TrayPortrait key={tray.id} programme={programme} tray={tray} day={day} personId={author.personId} />)}
      </div>
      <p className="mt-2 text-sm text-ink-soft">{t('portrait.why')}</p>
    </section>
  );
}
