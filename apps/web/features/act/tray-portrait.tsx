import { useTranslations } from 'next-intl';
import { type ChangeEvent, useState } from 'react';
import { chime } from '../../lib/chime.ts';
import { keepHere } from '../../lib/phone/device.ts';
import { photoWork, smallPhoto, type SmallPhoto } from '../../lib/phone/photo-work.ts';
import { buttonClass } from '../../ui/button-class.ts';

interface TrayPortraitProps {
  readonly programme: string;
  readonly tray: { readonly id: string; readonly name: string };
  readonly day: string;
  /** Who logs here. */
  readonly personId: string;
}

/** Once its lines are in: the tray from above, so that a row without a label can be told later. Kept like every photo, and sent with a signal. */
export function TrayPortrait({ programme, tray, day, personId }: TrayPortraitProps) {
  const t = useTranslations('act.portrait');
  const [state, setState] = useState<'none' | 'busy' | 'kept' | 'notAPicture' | 'notKept'>('none');

  async function take({ target }: ChangeEvent<HTMLInputElement>): Promise<void> {
    const [file] = target.files ?? [];
    if (!file) return;
    target.value = '';
    setState('busy');
    const photo: SmallPhoto | undefined = await smallPhoto(file).catch(() => undefined);
    const next = photo === undefined ? 'notAPicture' : await keepHere(programme, [photoWork(programme, photo, { placeId: tray.id, kind: 'portrait' }, { about: tray.name, takenOn: day, takenBy: personId })]).then(() => 'kept' as const, () => 'notKept' as const);
    setState(next);
    chime(next === 'kept' ? 'kept' : 'failed');
  }

  return (
    <div className="flex flex-wrap items-center gap-2">
      <label className={`${buttonClass('quiet')} has-focus-visible:outline-3 has-focus-visible:outline-[var(--focus)]`}>
        {t('take', { tray: tray.name })}
        <input type="file" accept="image/*" capture="environment" disabled={state === 'busy'} onChange={(event) => void take(event)} className="sr-only" />
      </label>
      <span role={state === 'notAPicture' || state === 'notKept' ? 'alert' : 'status'} className="text-sm empty:hidden">{state === 'none' ? '' : state === 'kept' ? `✓ ${t('kept')}` : t(state)}</span>
    </div>
  );
}
