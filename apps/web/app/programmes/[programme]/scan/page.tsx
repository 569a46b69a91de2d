import { NextIntlClientProvider } from 'next-intl';
import { getMessages } from 'next-intl/server';
import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { ScanScreen } from '../../../../features/scan/scan-screen.tsx';
import { labelBearer } from '../../../../lib/label-bearer.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { publicAddress } from '../../../../lib/public-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { wayToBearer } from '../../../../lib/way-to-bearer.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { codeSaid } from '../../../../ui/scanner/code-said.ts';
import { filled } from '../../../../ui/scanner/scanner-words.ts';

interface ScanPageProps {
  readonly params: Promise<{ programme: string }>;
  /** Typed where there is no script. */
  readonly searchParams: Promise<{ code?: string }>;
}

export const generateMetadata = titled(({ scan }) => scan.title);

export default async function ScanPage({ params, searchParams }: ScanPageProps) {
  const [{ programme }, { code }] = await Promise.all([params, searchParams]);
  const [{ role }, { ui, scan }, address] = await Promise.all([workplaceOf(programme), getMessages(), publicAddress()]);
  const said = code ? codeSaid(code, [address]) : undefined;
  const bearer = said?.is === 'label' || said?.is === 'mistyped' ? await labelBearer(programme, said.code) : undefined;
  if (bearer) redirect(wayToBearer(programme, bearer) as Route);
  const here = pageOf(programme, 'scan');
  return (
    <>
      <PageHeading lead={scan.lead}>{scan.title}</PageHeading>
      {code && <p role="alert" className="mb-6 max-w-prose font-semibold text-rust">{said?.is === 'mistyped' ? filled(scan.scanner.mistyped, { code }) : `${code}: ${scan.unknown}`}</p>}
      <NextIntlClientProvider messages={{ ui, scan }}>
        <ScanScreen programme={programme} address={address} action={here} />
      </NextIntlClientProvider>
      {role !== 'partner' && (
        <div className="mt-10 flex flex-wrap gap-3 border-t border-line pt-6">
          <ButtonLink look="quiet" href={pageOf(programme, 'scan', 'many')}>{scan.many}</ButtonLink>
          <ButtonLink look="quiet" href={pageOf(programme, 'without-label')}>{scan.withoutLabel}</ButtonLink>
        </div>
      )}
    </>
  );
}
