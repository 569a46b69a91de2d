import { Recipe } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { VersionFacts } from '../../../../../features/recipe/version-facts.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Caution } from '../../../../../ui/caution.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ recipes }) => recipes.kind);

export default async function RecipePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [recipe, { isDesk }, { recipes: said }, t] = await Promise.all([read(apiOf(programme, 'recipes', id), Recipe), workplaceOf(programme), getMessages(), getTranslations('recipes')]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'recipes'), words: said.title }]} />
      <PageHeading kind={said.kind} act={isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'recipes', id, 'versions', 'new')}>{said.addVersion}</ButtonLink>}>
        {recipe.name}
      </PageHeading>
      {recipe.versions.map((version) => (
        <Section key={version.id} heading={t('version', { n: version.version })}>
          <VersionFacts version={version} />
        </Section>
      ))}
      <Caution>{said.caution}</Caution>
    </>
  );
}
