import { getTranslations } from 'next-intl/server';
import { forbidden } from 'next/navigation';
import { printerPdf } from '../../../../../../features/label/printer-pdf.ts';
import { CROSS, RULERS } from '../../../../../../features/label/printer.ts';
import { workplaceOf } from '../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { pdfStream } from '../../../../../../ui/paper/pdf-stream.ts';

const SIZES = { A4: { width: 210, height: 297 }, LETTER: { width: 215.9, height: 279.4 } } as const;

/** A page to measure how the printer misses. */
export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const [t, { role }] = await Promise.all([getTranslations('labels.calibration'), workplaceOf(programme)]);
  if (role === 'partner') forbidden();
  const lengths = [t('paperLeft', { mm: CROSS.x }), t('paperTop', { mm: CROSS.y }), t('paperAcross', { mm: RULERS.across }), t('paperDown', { mm: RULERS.down })];
  return pdfStream(printerPdf({ paper: SIZES[paperOf(new URL(request.url).searchParams)], title: t('paperTitle'), language: 'en', lead: t('paperLead'), lengths }), 'line-up-the-printer');
}
