'use client';

import { useTranslations } from 'next-intl';
import { useSyncExternalStore } from 'react';
import { PLATE } from '../../ui/form/plate.ts';

const never = () => () => undefined;

/** By the camera, or out of what is there already. Without script both are sent with the form as they are. */
export function PictureInputs({ onChosen }: { onChosen: (files: readonly File[]) => void }) {
  const t = useTranslations('photos');
  // What was chosen is listed below once the script is there; the browser’s own words on it would say “no file”.
  const isListed = useSyncExternalStore(never, () => true, () => false);
  const input = (words: string, more: { capture?: 'environment'; id?: string }) => (
    <label className={`${PLATE} relative w-full flex-wrap sm:w-auto`}>
      <span className="font-semibold">{words}</span>
      <input
        {...more}
        type="file"
        name="photos"
        accept="image/*"
        multiple
        className={isListed ? 'sr-only' : 'w-full min-w-0 text-sm'}
        onChange={({ currentTarget }) => {
          onChosen([...(currentTarget.files ?? [])]);
          currentTarget.value = '';
        }}
      />
    </label>
  );
  return (
    <div className="flex w-full flex-wrap gap-3">
      {input(t('take'), { capture: 'environment' })}
      {input(t('choose'), { id: 'photos' })}
    </div>
  );
}
