import { DryRun, Import } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { DryRunView } from '../../../../../features/import/dry-run-view.tsx';
import { Failed, Writing, Written } from '../../../../../features/import/outcome.tsx';
import { PlanForm } from '../../../../../features/import/plan-form.tsx';
import { SheetSample } from '../../../../../features/import/sheet-sample.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export default async function ImportPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [sheet, { imports: said }, t] = await Promise.all([read(apiOf(programme, 'imports', id), Import), getMessages(), getTranslations('imports')]);
  const isOpen = sheet.state === 'read' || sheet.state === 'failed';
  const dryRun = isOpen && sheet.plan ? await read(apiOf(programme, 'imports', id, 'dry-run'), DryRun) : undefined;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'import'), words: said.title }]} />
      <PageHeading kind={said.state[sheet.state]} lead={t('one.lead', { rows: sheet.guess.rows })}>
        {sheet.fileName}
      </PageHeading>
      {sheet.state === 'writing' && <Writing programme={programme} sheet={sheet} />}
      {sheet.state === 'written' && sheet.result && <Written programme={programme} result={sheet.result} />}
      {sheet.state === 'failed' && <Failed failure={sheet.failure} />}
      {dryRun && (
        <div id="what-it-would-do">
          <Section heading={said.dry.title}>
            <DryRunView programme={programme} id={id} dryRun={dryRun} />
          </Section>
        </div>
      )}
      {isOpen && (
        <Section heading={dryRun ? said.one.change : said.one.decide} lead={said.one.decideLead}>
          <div className="mb-8">
            <SheetSample guess={sheet.guess} />
          </div>
          <PlanForm programme={programme} sheet={sheet} />
        </Section>
      )}
    </>
  );
}
