import { getTranslations } from 'next-intl/server';
import { titled } from '../../../../lib/titled.ts';
import { Way } from '../../../../ui/way.tsx';
import { SignOutButton } from '../../../../features/account/sign-out-button.tsx';
import { navFor } from '../../../../features/shell/nav-items.ts';
import { WhoIsHere } from '../../../../features/shell/who-is-here.tsx';
import { pageOf } from '../../../../lib/page-address.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Section } from '../../../../ui/section.tsx';

export const generateMetadata = titled(({ shell }) => shell.more);

export default async function MorePage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const workplace = await workplaceOf(programme);
  const t = await getTranslations('shell');
  return (
    <>
      <PageHeading lead={t('moreLead')}>{t('more')}</PageHeading>
      {navFor(workplace.role).map((group) => (
        <Section key={group.name} heading={t(`groups.${group.name}`)}>
          <ul className="grid gap-2 sm:grid-cols-2">
            {group.items.map(({ name, path }) => (
              <li key={name}>
                <Way href={pageOf(programme, ...path)} className="flex min-h-14 items-center rounded-md border-2 border-line bg-sheet px-4 font-semibold no-underline hover:bg-lichen">
                  {t(`items.${name}`)}
                </Way>
              </li>
            ))}
          </ul>
        </Section>
      ))}
      <WhoIsHere workplace={workplace} signOut={<SignOutButton />} />
    </>
  );
}
