import { getMessages } from 'next-intl/server';
import { addRecipe } from '../../../../../features/recipe/add-recipe.action.ts';
import { VersionFields } from '../../../../../features/recipe/version-fields.tsx';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';
import { TextField } from '../../../../../ui/form/text-field.tsx';
import { underPrefix } from '../../../../../ui/form/under-prefix.ts';

export const generateMetadata = titled(({ recipes }) => recipes.addTitle);

export default async function NewRecipePage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ recipes: said }, { today }] = await Promise.all([getMessages(), workplaceOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'recipes'), words: said.title }]}
      title={said.addTitle}
      action={addRecipe.bind(null, programme)}
      labels={{ name: said.fields.name, ...underPrefix('version/', said.fields) }}
      send={said.save}
      newId={newId()}
    >
      <TextField name="name" />
      <VersionFields prefix="version/" versionId={newId()} today={today} />
    </FormPage>
  );
}
