import { getMessages, getTranslations } from 'next-intl/server';
import { forbidden } from 'next/navigation';
import { forgetPrinter, keepPrinter } from '../../../../../features/label/keep-printer.action.ts';
import { keptPrinter } from '../../../../../features/label/kept-printer.ts';
import { CROSS, RULERS } from '../../../../../features/label/printer.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { ActionForm } from '../../../../../ui/form/action-form.tsx';
import { TextField } from '../../../../../ui/form/text-field.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ labels }) => labels.printer);

const MEANT = { left: CROSS.x, top: CROSS.y, ...RULERS } as const;

export default async function PrinterPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [printer, { labels }, t, { role }] = await Promise.all([keptPrinter(), getMessages(), getTranslations('labels.calibration'), workplaceOf(programme)]);
  if (role === 'partner') forbidden();
  const said = labels.calibration;
  const signed = (value: number, digits: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(digits)}`;
  const parts = (scale: number) => signed((scale - 1) * 100, 1);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'labels'), words: labels.title }]} />
      <PageHeading lead={said.lead}>{labels.printer}</PageHeading>
      {printer && (
        <div className="not-on-paper mb-8 grid gap-4">
          <p className="font-semibold">{t('kept', { x: signed(printer.offset.x, 1), y: signed(printer.offset.y, 1), across: parts(printer.scale.x), down: parts(printer.scale.y) })}</p>
          <ActionForm action={forgetPrinter.bind(null, programme)} send={said.forget} look="quiet" />
        </div>
      )}
      <Section heading={said.one} lead={said.oneLead}>
        <p className="not-on-paper flex flex-wrap gap-x-6">
          {(['A4', 'Letter'] as const).map((paper) => <a key={paper} href={`${pageOf(programme, 'labels', 'printer', 'pdf')}?paper=${paper.toLowerCase()}`} className="inline-flex min-h-8 items-center underline">{t('page', { paper })}</a>)}
        </p>
      </Section>
      <Section heading={said.two} lead={said.twoLead}>
        <ActionForm action={keepPrinter.bind(null, programme)} labels={said.fields} send={said.save}>
          {(['left', 'top', 'across', 'down'] as const).map((name) => <TextField key={name} name={name} keypad="decimal" hint={t('meant', { mm: MEANT[name] })} />)}
        </ActionForm>
      </Section>
    </>
  );
}
