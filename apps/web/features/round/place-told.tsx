import { useTranslations } from 'next-intl';
import { TAPS } from '@sprigline/domain';
import type { PlaceAnswer } from './place-answer.ts';

/** How the place was found, in words: "heat on: no · mould seen: no". */
export function PlaceTold({ answer: { found } }: { answer: PlaceAnswer }) {
  const t = useTranslations('round.place');
  return <p className="mt-1">{TAPS.flatMap((tap) => { const answer = found[tap]; return answer === undefined ? [] : [t('said', { tap: t(`taps.${tap}`), answer: t(`answers.${answer}`) })]; }).join(' · ')}</p>;
}
