import { REFUSALS } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { DoorPage } from '../../../../ui/door-page.tsx';

interface ProblemParams {
  readonly params: Promise<{ area: string; what: string }>;
}

async function codeOf({ params }: ProblemParams): Promise<string> {
  const { area, what } = await params;
  return `${area}/${what}`;
}

export async function generateMetadata(asked: ProblemParams): Promise<Metadata> {
  return { title: REFUSALS[await codeOf(asked)]?.title ?? null };
}

/** What a problem type of the API means, and what to do: its address is the type itself. */
export default async function ProblemPage(asked: ProblemParams) {
  const code = await codeOf(asked);
  const refusal = REFUSALS[code];
  if (!refusal) notFound();
  const { refusals, shell } = await getMessages();
  const words: Readonly<Record<string, string>> = refusals;
  return (
    <DoorPage heading={refusal.title} lead={`${refusal.status} ${code}`}>
      <p className="mb-6">{words[code]}</p>
      <ButtonLink look="quiet" href="/">{shell.toStart}</ButtonLink>
    </DoorPage>
  );
}
