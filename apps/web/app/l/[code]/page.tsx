import { getTranslations } from 'next-intl/server';
import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { TypeLabel } from '../../../features/scan/type-label.tsx';
import { labelBearer } from '../../../lib/label-bearer.ts';
import { titled } from '../../../lib/titled.ts';
import { wayToBearer } from '../../../lib/way-to-bearer.ts';
import { meNow } from '../../../lib/workplace.ts';
import { DoorPage } from '../../../ui/door-page.tsx';
import { codeSaid } from '../../../ui/scanner/code-said.ts';
import { Way } from '../../../ui/way.tsx';

export const generateMetadata = titled(({ scan }) => scan.door.title);

/** Where the code on a label leads: to what it is on, in whichever programme of the person's that is. Who is not signed in does so first. */
export default async function LabelPage({ params }: { params: Promise<{ code: string }> }) {
  const said = codeSaid(plainly((await params).code), []);
  const [{ programmes }, t] = await Promise.all([meNow(), getTranslations('scan.door')]);
  if (said.is !== 'label' && said.is !== 'mistyped') return <TypeLabel wrong="" />;
  const { code } = said;
  const found = (await Promise.all(programmes.map(async ({ handle, name }) => ({ handle, name, bearer: await labelBearer(handle, code) })))).flatMap(({ handle, name, bearer }) =>
    bearer ? [{ name, href: wayToBearer(handle, bearer) as Route }] : [],
  );
  const [only, ...others] = found;
  if (!only) return <TypeLabel wrong={code} isMistyped={said.is === 'mistyped'} />;
  if (others.length === 0) redirect(only.href);
  return (
    <DoorPage heading={t('which')} lead={t('whichLead', { code })}>
      <ul className="grid gap-3">
        {found.map(({ name, href }) => (
          <li key={href}>
            <Way href={href} className="flex min-h-16 items-center rounded-md border-2 border-line-strong px-5 py-3 text-lg font-semibold no-underline hover:bg-lichen">{name}</Way>
          </li>
        ))}
      </ul>
    </DoorPage>
  );
}

function plainly(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
