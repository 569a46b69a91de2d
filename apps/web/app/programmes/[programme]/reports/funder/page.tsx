import { getMessages } from 'next-intl/server';
import { AsOfDay, Definitions } from '../../../../../features/report/as-of-day.tsx';
import { FunderTables } from '../../../../../features/report/funder-tables.tsx';
import { readFunder } from '../../../../../features/report/read-report.ts';
import { askedOf, FUNDER, queryOf, type Search } from '../../../../../features/report/report-address.ts';
import { ReportForm } from '../../../../../features/report/report-form.tsx';
import { ReportLinks } from '../../../../../features/report/report-links.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ reports }) => reports.funder.title);

export default async function FunderPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const asked = askedOf(await searchParams, FUNDER);
  const [report, { reports: said }] = await Promise.all([readFunder(programme, asked), getMessages()]);
  const { funder } = said;
  const { sites, taxa, seasons } = report.choices;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'reports'), words: said.title }]} />
      <PageHeading kind={said.kind}>{funder.title}</PageHeading>
      <ReportForm
        label={funder.title} today={report.today} asOf={report.asOf}
        choices={[
          { name: 'siteId', label: funder.site, chosen: asked['siteId'], none: said.all, choices: sites },
          { name: 'season', label: funder.season, chosen: asked['season'], none: said.all, choices: seasons.map(({ year, name }) => ({ id: String(year), name })) },
          { name: 'taxonId', label: funder.taxon, chosen: asked['taxonId'], none: said.all, choices: taxa },
        ]}
      />
      <ReportLinks pdf={(paper) => `${pageOf(programme, 'reports', 'funder', 'pdf')}${queryOf(asked, { paper })}`} csv={`${apiOf(programme, 'reports', 'funder.csv')}${queryOf(asked)}`} />
      <AsOfDay {...report} />
      {report.rows.length === 0 ? <p>{funder.empty}</p> : <FunderTables report={report} />}
      <Definitions heading={said.means} says={Object.values(funder.definitions)} />
    </>
  );
}
