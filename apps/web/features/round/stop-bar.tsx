import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';

interface StopBarProps {
  /** Nothing tapped in yet: going on means leaving the batch out. */
  readonly isBlank: boolean;
  readonly back: () => void;
  readonly fine: () => void;
  readonly next: () => void;
}

/** At the thumb: back, nothing to report, onward. */
export function StopBar({ isBlank, back, fine, next }: StopBarProps) {
  const t = useTranslations('round');
  return (
    <div className="stop-bar sticky bottom-0 -mx-4 flex flex-wrap gap-2 border-t border-line bg-paper px-4 py-2">
      <button type="button" onClick={back} className={`${buttonClass('quiet')} narrow-button min-h-16`}>{t('back')}</button>
      <button type="button" onClick={fine} disabled={!isBlank} className={`${buttonClass('quiet')} narrow-button min-h-16 min-w-24 flex-1 leading-tight disabled:invisible`}>{t('fine')}</button>
      <button type="button" onClick={next} className={`${buttonClass(isBlank ? 'quiet' : 'main')} narrow-button min-h-16 min-w-20 text-lg`}>{isBlank ? t('skip') : t('next')}</button>
    </div>
  );
}
