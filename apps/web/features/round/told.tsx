import { useTranslations } from 'next-intl';
import { type Answer, fieldsFor } from './answer.ts';

/** What was tapped in, in words: "34 alive, 12 rooted, 2 black base (gentle tug)". */
export function Told({ answer: { said, stage, look, numbers, dead } }: { answer: Answer }) {
  const t = useTranslations('round');
  const causes = useTranslations('entries.causes');
  if (said === 'fine') return <p className="mt-1">{t('told', { what: t('fine').toLowerCase() })}</p>;
  const seen = fieldsFor(stage, look).flatMap((field) => (numbers[field] === undefined ? [] : [t(field, { n: numbers[field] })]));
  const lost = Object.entries(dead).flatMap(([cause, n]) => (n > 0 ? [t('dead', { n, cause: causes(cause as 'brown') })] : []));
  const how = stage === 'planted' ? '' : ` (${t(`looks.${look}`).toLowerCase()})`;
  return <p className="mt-1">{t('told', { what: [...seen, ...lost].join(', ') + how })}</p>;
}
