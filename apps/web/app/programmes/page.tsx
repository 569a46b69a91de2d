import { getMessages } from 'next-intl/server';
import { titled } from '../../lib/titled.ts';
import { Way } from '../../ui/way.tsx';
import { redirect } from 'next/navigation';
import { SignOutButton } from '../../features/account/sign-out-button.tsx';
import { pageOf } from '../../lib/page-address.ts';
import { meNow } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { DoorPage } from '../../ui/door-page.tsx';

export const generateMetadata = titled(({ programmes }) => programmes.title);

/** Whoever works in one programme only never sees this page, unless they ask for it. */
export default async function ProgrammesPage({ searchParams }: { searchParams: Promise<{ all?: string }> }) {
  const [{ all }, me, { programmes: said, words }] = await Promise.all([searchParams, meNow(), getMessages()]);
  const [first, ...others] = me.programmes;
  const isOwner = me.programmes.some(({ role }) => role === 'owner');
  if (first && others.length === 0 && all === undefined) redirect(pageOf(first.handle));
  return (
    <DoorPage heading={said.title} lead={me.programmes.length === 0 ? said.none : undefined}>
      <ul className="grid gap-3">
        {me.programmes.map(({ handle, name, role, isDemo }) => (
          <li key={handle}>
            <Way href={pageOf(handle)} className="flex min-h-16 flex-wrap items-center justify-between gap-x-4 rounded-md border-2 border-line-strong px-5 py-3 no-underline hover:bg-lichen">
              <span className="text-lg font-semibold">{name}</span>
              <span className="text-ink-soft">{isDemo ? said.demo : words.role[role]}</span>
            </Way>
          </li>
        ))}
      </ul>
      <div className="mt-8 flex flex-wrap gap-3">
        {isOwner && <ButtonLink look="quiet" href="/programmes/new">{said.open}</ButtonLink>}
        <SignOutButton />
      </div>
    </DoorPage>
  );
}
