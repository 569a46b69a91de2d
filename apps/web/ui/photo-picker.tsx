import { useTranslations } from 'next-intl';
import { type ChangeEvent, useEffect, useState } from 'react';
import { smallPhoto, type SmallPhoto } from '../lib/phone/photo-work.ts';
import { buttonClass } from './button-class.ts';

interface PhotoPickerProps {
  readonly photos: readonly SmallPhoto[];
  readonly change: (next: (before: readonly SmallPhoto[]) => readonly SmallPhoto[]) => void;
}

/** Photos that go with what is being told; they are kept with it, and not before. */
export function PhotoPicker({ photos, change }: PhotoPickerProps) {
  const t = useTranslations('ui.photos');
  const [state, setState] = useState<'idle' | 'busy' | 'notAPicture'>('idle');

  async function take({ target }: ChangeEvent<HTMLInputElement>): Promise<void> {
    const files = [...(target.files ?? [])];
    target.value = '';
    setState('busy');
    try {
      for (const file of files) {
        const photo = await smallPhoto(file);
        change((before) => [...before, photo]);
      }
      setState('idle');
    } catch {
      setState('notAPicture');
    }
  }

  return (
    <div className="grid gap-2">
      <label className={`${buttonClass('quiet')} has-focus-visible:outline-3 has-focus-visible:outline-[var(--focus)]`}>
        {t('take')}
        <input type="file" accept="image/*" capture="environment" multiple disabled={state === 'busy'} onChange={(event) => void take(event)} className="sr-only" />
      </label>
      <ul className="flex flex-wrap gap-2 empty:hidden">
        {photos.map((photo, at) => <PhotoHere key={photo.id} photo={photo} nth={at + 1} leaveOut={() => change((before) => before.filter(({ id }) => id !== photo.id))} />)}
      </ul>
      <p role={state === 'notAPicture' ? 'alert' : 'status'} className={`empty:hidden ${state === 'notAPicture' ? 'font-semibold text-rust' : 'text-sm'}`}>
        {state === 'idle' ? (photos.length > 0 ? t('withIt', { n: photos.length }) : '') : t(state)}
      </p>
    </div>
  );
}

function PhotoHere({ photo: { bytes }, nth, leaveOut }: { photo: SmallPhoto; nth: number; leaveOut: () => void }) {
  const t = useTranslations('ui.photos');
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  return (
    <li className="grid gap-1">
      {/* Only on this phone as yet: there is nothing to optimise. */}
      {address && <img src={address} alt={t('nth', { n: nth })} className="size-24 rounded-md border-2 border-line-strong object-cover" />}
      <button type="button" onClick={leaveOut} aria-label={t('leaveOutNth', { n: nth })} className="min-h-14 cursor-pointer underline">{t('leaveOut')}</button>
    </li>
  );
}
