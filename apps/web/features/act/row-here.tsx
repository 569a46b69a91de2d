import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { fieldAddress } from '../../lib/field-address.ts';
import { rowsOf, trayRows } from '../../lib/tray-rows.ts';
import { StageMark } from '../../ui/stage-mark.tsx';
import { TrayPicture } from '../../ui/tray-picture.tsx';
import type { FieldPackNow } from './use-field-pack.ts';

const KEY = 'flex min-h-14 cursor-pointer touch-manipulation items-center justify-center rounded-md border-2 px-2 text-center';
const lookOf = (isChosen: boolean) => (isChosen ? 'border-juniper bg-lichen font-semibold text-on-lichen' : 'border-line-strong bg-sheet');

/** A row has lost its label, and there is no signal: what was stuck into it, by the rows that this phone took along. The portrait itself stays at the server. */
export function RowHere({ programme, walkId, found: { walk } }: { programme: string; walkId: string; found: FieldPackNow }) {
  const t = useTranslations('act.row');
  const [chosen, choose] = useState<{ readonly placeId: string; readonly row?: number }>();
  const trays = (walk?.round.stops ?? []).filter(({ place, batches }) => place.kind === 'tray' && batches.some(({ rows }) => rowsOf(rows).length > 0));
  if (trays.length === 0) return null;
  const tray = trays.length === 1 ? trays[0] : trays.find(({ place }) => place.id === chosen?.placeId);
  const { rows } = trayRows(null, tray?.batches ?? []);
  const found = rows.find(({ row }) => row === chosen?.row);
  return (
    <details className="mt-6">
      <summary className="inline-flex min-h-14 cursor-pointer items-center underline">{t('go')}</summary>
      <div className="mt-2 grid gap-4">
        {trays.length > 1 && (
          <div role="group" aria-label={t('tray')} className="grid grid-cols-[repeat(auto-fill,minmax(8rem,1fr))] gap-2">
            {trays.map(({ place, path }) => <button key={place.id} type="button" aria-pressed={place.id === tray?.place.id} onClick={() => choose({ placeId: place.id })} className={`${KEY} ${lookOf(place.id === tray?.place.id)}`}>{[...path.slice(1), place.name].join(' › ')}</button>)}
          </div>
        )}
        {tray && (
          <>
            <TrayPicture rows={rows} marked={chosen?.row} />
            <div role="group" aria-label={t('row')} className="grid grid-cols-[repeat(auto-fill,minmax(5rem,1fr))] gap-2">
              {rows.map(({ row }) => <button key={row} type="button" aria-pressed={row === chosen?.row} onClick={() => choose({ placeId: tray.place.id, row })} className={`${KEY} ${lookOf(row === chosen?.row)}`}>{t('nth', { row })}</button>)}
            </div>
          </>
        )}
        <div role="status" className="grid gap-2 empty:hidden">
          {found && <p className="font-semibold">{t('stuckThere', { n: found.batches.length, row: found.row })}</p>}
          {found?.batches.map(({ id, label, stage, donorTree, taxon }) => (
            <a key={id} href={fieldAddress(programme, 'batch', walkId, id)} className="flex min-h-14 flex-wrap items-center gap-x-4 gap-y-1 rounded-md border border-line bg-sheet px-3 py-2 no-underline hover:bg-lichen">
              <span className="tie-label">{label ?? `…${id.slice(-6)}`}</span>
              <StageMark stage={stage} />
              <span className="text-sm text-ink-soft">{[donorTree?.label, taxon?.name].filter(Boolean).join(', ')}</span>
            </a>
          ))}
        </div>
      </div>
    </details>
  );
}
