import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { beQuiet, chime, isQuiet } from '../../lib/chime.ts';
import { buttonClass } from '../../ui/button-class.ts';

/** Whether this phone says by a sound that something is kept. */
export function SoundSwitch() {
  const t = useTranslations('field');
  const [quiet, setQuiet] = useState(false);
  useEffect(() => setQuiet(isQuiet()), []);
  function turn(): void {
    beQuiet(!quiet);
    setQuiet(!quiet);
    if (quiet) chime('kept');
  }
  return <button type="button" aria-pressed={!quiet} onClick={turn} className={buttonClass('quiet')}>{quiet ? t('soundOff') : t('soundOn')}</button>;
}
