import { useTranslations } from 'next-intl';
import { type ChangeEvent, useState } from 'react';
import { keepHere } from '../../lib/phone/device.ts';
import type { SmallPhoto } from '../../lib/phone/photo-work.ts';
import { chime } from '../../lib/chime.ts';
import type { Stop } from './stop.ts';
import { STOP_KEY } from './stop-head.tsx';

interface StopPhotoProps {
  readonly programme: string;
  readonly stop: Stop;
  readonly day: string;
  /** Who logs here. */
  readonly personId: string;
}

type State = 'none' | 'busy' | 'kept' | 'notAPicture' | 'notKept';

/** A photo of the batch, made small on this phone before it is kept: nothing of the file itself leaves it. */
export function StopPhoto({ programme, stop: { batchId, label }, day, personId }: StopPhotoProps) {
  const t = useTranslations('round.photo');
  const [state, setState] = useState<State>('none');
  const [n, count] = useState(0);

  async function take({ target }: ChangeEvent<HTMLInputElement>): Promise<void> {
    const files = [...(target.files ?? [])];
    target.value = '';
    for (const file of files) {
      setState('busy');
      // One after the other: a large picture fills a cheap phone.
      const next = await keepPhoto(file, { programme, batchId, label, day, personId });
      setState(next);
      if (next !== 'kept') return chime('failed');
      count((before) => before + 1);
      chime('kept');
    }
  }

  return (
    <span className="inline-flex items-center gap-2">
      <label className={`${STOP_KEY} has-focus-visible:outline-3 has-focus-visible:outline-[var(--focus)]`}>
        {t('take')}
        <input type="file" accept="image/*" capture="environment" multiple onChange={(event) => void take(event)} className="sr-only" />
      </label>
      <span role="status" className="text-sm empty:hidden">{state === 'none' ? '' : state === 'kept' ? `✓ ${t('kept', { n })}` : t(state)}</span>
    </span>
  );
}

async function keepPhoto(file: File, { programme, batchId, label, day, personId }: Omit<StopPhotoProps, 'stop'> & { batchId: string; label: string }): Promise<State> {
  let photo: SmallPhoto;
  const work = await import('../../lib/phone/photo-work.ts').catch(() => undefined);
  if (!work) return 'notKept';
  try {
    photo = await work.smallPhoto(file);
  } catch {
    return 'notAPicture';
  }
  try {
    await keepHere(programme, [work.photoWork(programme, photo, { batchId }, { about: label, takenOn: day, takenBy: personId })]);
    return 'kept';
  } catch {
    return 'notKept';
  }
}
