'use client';

import { useTranslations } from 'next-intl';
import { PLATE } from '../../ui/form/choice-group.tsx';

const ACCEPTED = 'image/*';

/** By the camera, or out of what is there already. Without script both are sent with the form as they are. */
export function PictureInputs({ onChosen }: { onChosen: (files: readonly File[]) => void }) {
  const t = useTranslations('photos');
  const input = (words: string, more: { capture?: 'environment'; id?: string }) => (
    <label className={`${PLATE} relative flex-wrap`}>
      <span className="font-semibold">{words}</span>
      <input
        {...more}
        type="file"
        name="photos"
        accept={ACCEPTED}
        multiple
        className="max-w-full text-sm"
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
