import { useTranslations } from 'next-intl';
import { type Answer, fieldsFor } from './answer.ts';

/** What was tapped in, in words: "34 alive, 12 rooted, 2 black base (gentle tug)". */
export function Told({ answer: { said, stage, look, numbers, dead }, isShort = false }: { answer: Answer; isShort?: boolean }) {
  const t = useTranslations('round');
  const causes = useTranslations('entries.causes');
  const line = isShort ? 'text-sm' : 'mt-1';
  if (said === 'fine') return <p className={line}>{t('told', { what: t('fine').toLowerCase() })}</p>;
  const seen = fieldsFor(stage, look).flatMap((field) => (numbers[field] === undefined ? [] : [t(field, { n: numbers[field] })]));
  const lost = Object.entries(dead).flatMap(([cause, n]) => (n > 0 ? [t('dead', { n, cause: causes(cause as 'brown') })] : []));
  const how = stage === 'planted' ? '' : ` (${t(`looks.${look}`).toLowerCase()})`;
  return <p className={line}>{t('told', { what: [...seen, ...lost].join(', ') + how })}</p>;
}
