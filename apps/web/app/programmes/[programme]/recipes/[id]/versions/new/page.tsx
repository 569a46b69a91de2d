import { Recipe } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { addVersion } from '../../../../../../../features/recipe/add-version.action.ts';
import { VersionFields } from '../../../../../../../features/recipe/version-fields.tsx';
import { newId } from '../../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ recipes }) => recipes.addVersion);

export default async function NewVersionPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [recipe, { today }, { recipes: said }, t] = await Promise.all([read(apiOf(programme, 'recipes', id), Recipe), workplaceOf(programme), getMessages(), getTranslations('recipes')]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'recipes'), words: said.title }, { href: pageOf(programme, 'recipes', id), words: recipe.name }]}
      title={t('addVersionTitle', { name: recipe.name })}
      lead={said.addVersionLead}
      action={addVersion.bind(null, programme, id)}
      labels={said.fields}
      send={said.save}
    >
      <VersionFields version={recipe.versions[0]} versionId={newId()} today={today} />
    </FormPage>
  );
}
