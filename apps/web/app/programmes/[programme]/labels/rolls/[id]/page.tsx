import { getMessages, getTranslations } from 'next-intl/server';
import { keptPrinter } from '../../../../../../features/label/kept-printer.ts';
import { readRoll } from '../../../../../../features/label/read-labels.ts';
import { RollTable } from '../../../../../../features/label/roll-table.tsx';
import { SheetOptions } from '../../../../../../features/label/sheet-options.tsx';
import { sayMoment } from '../../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../../ui/section.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ labels }) => labels.roll);

export default async function LabelRollPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [roll, printer, { zone }, { labels: said }, t] = await Promise.all([readRoll(programme, id), keptPrinter(), workplaceOf(programme), getMessages(), getTranslations('labels')]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'labels'), words: said.title }]} />
      <PageHeading kind={said.roll} lead={t('rollFacts', { codes: roll.codes.length, unclaimed: roll.unclaimed, day: sayMoment(roll.madeAt, zone) })}>{roll.name}</PageHeading>
      <Section heading={said.sheetTitle} isOffPaper>
        <SheetOptions programme={programme} asked={{ roll: id }} printer={printer} isRoll />
      </Section>
      <RollTable programme={programme} roll={roll} />
      <p className="not-on-paper mt-4"><a href={apiOf(programme, 'label-rolls', id, 'codes.csv')} className="inline-flex min-h-8 items-center underline">{said.csv}</a></p>
    </>
  );
}
