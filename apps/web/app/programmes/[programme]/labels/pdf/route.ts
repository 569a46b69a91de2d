import { getMessages, getTranslations } from 'next-intl/server';
import { labelsAsked } from '../../../../../features/label/label-choice.ts';
import { labelsPdf } from '../../../../../features/label/labels-pdf.ts';
import { printedLabels, toPrintOf, toPrintOfRoll } from '../../../../../features/label/pdf-of-labels.ts';
import { printSettings } from '../../../../../features/label/print-settings.ts';
import { readLabels, readRoll } from '../../../../../features/label/read-labels.ts';
import { publicAddress } from '../../../../../lib/public-address.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { pdfStream } from '../../../../../ui/paper/pdf-stream.ts';

/** Sheets of labels: of a roll (`?roll=`), or of batches, donor trees and places. */
export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const asked = new URL(request.url).searchParams;
  const settings = printSettings(asked);
  const [address, { name }, { words }, t] = await Promise.all([publicAddress(), workplaceOf(programme), getMessages(), getTranslations('labels')]);
  const roll = asked.get('roll');
  const all = roll === null
    ? toPrintOf(await readLabels(programme, labelsAsked(asked)), { t, stages: words.stage })
    : toPrintOfRoll(await readRoll(programme, roll), name, settings.isOnlyFree);
  return pdfStream(labelsPdf({ ...settings, title: t('title'), language: 'en', labels: printedLabels(all, address, settings) }), 'labels');
}
