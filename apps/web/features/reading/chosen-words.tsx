import type { ReadingChoices } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { optionsOf } from './filter-form.tsx';
import { FILTERS } from './reading-address.ts';

/** On paper, where the form is not: to what the reading was narrowed. */
export function ChosenWords({ choices, chosen }: { choices: ReadingChoices; chosen: Readonly<Record<string, string>> }) {
  const { readings: said } = useMessages();
  const t = useTranslations('dashboards');
  const options = optionsOf(choices, said.ageClass);
  const told = FILTERS.flatMap((name) => {
    const option = options[name].find(({ id }) => id === chosen[name]);
    return option ? [`${said.fields[name].toLowerCase()}: ${option.name}`] : [];
  });
  if (told.length === 0) return null;
  return <p className="mb-2 hidden print:block">{t('only', { list: told.join('; ') })}</p>;
}
