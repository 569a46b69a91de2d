import type { RecipeVersion } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Facts } from '../../ui/facts.tsx';

export function VersionFacts({ version }: { version: RecipeVersion }) {
  const said = useMessages().recipes;
  const t = useTranslations('recipes');
  const hormone = [version.hormone, version.hormonePpm !== null && t('ppm', { n: version.hormonePpm }), version.hormoneForm && said.hormoneForm[version.hormoneForm]].filter(Boolean).join(', ');
  return (
    <Facts
      facts={[
        { term: said.fields.hormone, says: hormone === '' ? said.noHormone : hormone },
        { term: said.fields.medium, says: version.medium },
        { term: said.fields.wound, says: version.wound },
        { term: said.fields.steps, says: version.steps && <span className="whitespace-pre-line">{version.steps}</span> },
        { term: said.fields.madeOn, says: sayDay(version.madeOn) },
      ]}
    />
  );
}
