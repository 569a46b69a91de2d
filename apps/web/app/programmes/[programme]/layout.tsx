import type { Metadata } from 'next';
import { NextIntlClientProvider } from 'next-intl';
import { getMessages } from 'next-intl/server';
import type { ReactNode } from 'react';
import { SignOutButton } from '../../../features/account/sign-out-button.tsx';
import { OutboxLine } from '../../../features/outbox/outbox-line.tsx';
import { FootBar } from '../../../features/shell/foot-bar.tsx';
import { atHandFor, navFor } from '../../../features/shell/nav-items.ts';
import { SideNav } from '../../../features/shell/side-nav.tsx';
import { WhoIsHere } from '../../../features/shell/who-is-here.tsx';
import { workplaceOf } from '../../../lib/workplace.ts';
import { DemoBanner } from '../../../ui/demo-banner.tsx';

interface ProgrammeParams {
  readonly params: Promise<{ programme: string }>;
}

export async function generateMetadata({ params }: ProgrammeParams): Promise<Metadata> {
  const { name } = await workplaceOf((await params).programme);
  return { title: { default: name, template: `%s – ${name}` } };
}

export default async function ProgrammeLayout({ params, children }: ProgrammeParams & { children: ReactNode }) {
  const [workplace, messages] = await Promise.all([workplaceOf((await params).programme), getMessages()]);
  const groups = navFor(workplace.role);
  return (
    <div className="lg:not-print:grid lg:min-h-dvh lg:grid-cols-[17rem_minmax(0,1fr)]">
      <SideNav programme={workplace} groups={groups} foot={<WhoIsHere workplace={workplace} signOut={<SignOutButton />} />} />
      <div className="min-w-0 pb-24 lg:pb-0 print:pb-0">
        {workplace.isDemo && <DemoBanner />}
        <header className="border-b border-line px-4 py-2 text-sm font-semibold sm:px-8 lg:hidden">{workplace.name}</header>
        <main id="main" tabIndex={-1} className="mx-auto max-w-5xl px-4 py-6 outline-none sm:px-8 lg:py-10">
          <NextIntlClientProvider messages={{ field: { ago: messages.field.ago }, outbox: messages.outbox }}><OutboxLine /></NextIntlClientProvider>
          {children}
        </main>
      </div>
      <FootBar programme={workplace.handle} groups={groups} atHand={atHandFor(workplace.role)} />
    </div>
  );
}
