import { useMessages, useTranslations } from 'next-intl';
import type { Route } from 'next';
import { sayDay } from '../../lib/calendar.ts';
import type { TrayNow } from '../../lib/tray-now.ts';
import { apiOf } from '../../lib/workplace.ts';
import { Section } from '../../ui/section.tsx';
import { TrayPicture } from '../../ui/tray-picture.tsx';
import { Way } from '../../ui/way.tsx';

interface RowChoiceProps {
  readonly programme: string;
  readonly placeId: string;
  readonly tray: TrayNow;
  /** The row that was chosen. */
  readonly row: number | undefined;
}

/** A row lost its label: the tray as it was stuck, to choose the row from. */
export function RowChoice({ programme, placeId, tray: { rows, portrait }, row: chosen }: RowChoiceProps) {
  const { lostLabel: said } = useMessages();
  const t = useTranslations('lostLabel');
  const picture = portrait && { src: apiOf(programme, 'photos', portrait.id, 'large'), width: portrait.width, height: portrait.height, frame: portrait.frame };
  return (
    <Section heading={said.byRow} lead={portrait ? t('byRowPortrait', { day: sayDay(portrait.takenOn) }) : said.byRowLead}>
      <div className="grid items-start gap-6 md:grid-cols-2">
        <TrayPicture rows={rows} portrait={picture} marked={chosen} />
        <ol className="not-on-paper grid grid-cols-[repeat(auto-fill,minmax(8rem,1fr))] gap-2">
          {rows.map(({ row, batches }) => (
            <li key={row}>
              <Way href={`?${new URLSearchParams({ placeId, row: String(row), lost: 'row' })}#candidates` as Route} className={`flex min-h-14 flex-wrap items-center justify-center gap-x-2 rounded-md border-2 px-2 py-1 text-center no-underline ${row === chosen ? 'border-juniper bg-lichen font-semibold text-on-lichen' : 'border-line-strong bg-sheet'}`}>
                {t('rowName', { row })} <span className="text-sm">{batches.map(({ label }) => label).filter(Boolean).join(', ')}</span>
              </Way>
            </li>
          ))}
        </ol>
      </div>
    </Section>
  );
}
