import { getMessages, getTranslations } from 'next-intl/server';
import { giveMissing } from '../../../../../features/label/give-missing.action.ts';
import { keptPrinter } from '../../../../../features/label/kept-printer.ts';
import { isChosen, labelsAsked, MOST_TICKED, searchOf } from '../../../../../features/label/label-choice.ts';
import { labelQr } from '../../../../../features/label/label-qr.ts';
import { LabelTable } from '../../../../../features/label/label-table.tsx';
import { readLabels } from '../../../../../features/label/read-labels.ts';
import { SheetOptions } from '../../../../../features/label/sheet-options.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { publicAddress } from '../../../../../lib/public-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Empty } from '../../../../../ui/empty.tsx';
import { ActionForm } from '../../../../../ui/form/action-form.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface PrintLabelsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
}

export const generateMetadata = titled(({ labels }) => labels.print);

export default async function PrintLabelsPage({ params, searchParams }: PrintLabelsPageProps) {
  const [{ programme }, search] = await Promise.all([params, searchParams]);
  const asked = labelsAsked(searchOf(search));
  const [lines, printer, address, { labels: said }, t] = await Promise.all([isChosen(asked) ? readLabels(programme, asked) : [], keptPrinter(), publicAddress(), getMessages(), getTranslations('labels')]);
  const missing = lines.filter(({ code }) => code === null).length;
  const isTickable = lines.length <= MOST_TICKED;
  const isTooLong = lines.some(({ code }) => code !== null && !labelQr(address, code, false));
  const { of, placeId, standId } = asked;
  // Ticked boxes say which; without boxes it is everything in the place or the stand.
  const which: Record<string, string> = isTickable ? { of } : { of, ...(placeId ? { placeId } : {}), ...(standId ? { standId } : {}) };
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'labels'), words: said.title }]} />
      <PageHeading kind={said.print} lead={said.ofLead[of]}>{said.of[of]}</PageHeading>
      {lines.length === 0 ? <Empty act={<ButtonLink href={pageOf(programme, 'labels')}>{said.title}</ButtonLink>}>{said.nothing}</Empty> : (
        <div className="grid gap-10">
          {missing > 0 && (
            <section className="grid gap-4">
              <p className="max-w-prose">{t('missing', { n: missing })}</p>
              <ActionForm action={giveMissing.bind(null, programme, asked)} send={t('giveCodes', { n: missing })} />
            </section>
          )}
          <LabelTable programme={programme} lines={lines} isTickable={isTickable} />
          {!isTickable && <p>{said.tooMany}</p>}
          {missing < lines.length && (
            <Section heading={said.sheetTitle} isOffPaper>
              {isTooLong && <p className="mb-4 max-w-prose font-semibold">{said.noQr}</p>}
              <SheetOptions programme={programme} asked={which} printer={printer} />
            </Section>
          )}
        </div>
      )}
    </>
  );
}
