import { getMessages, getTranslations } from 'next-intl/server';
import { AsOfDay, Definitions } from '../../../../../features/report/as-of-day.tsx';
import { landownerLines } from '../../../../../features/report/landowner-lines.ts';
import { LandownerTables } from '../../../../../features/report/landowner-tables.tsx';
import { readLandowner } from '../../../../../features/report/read-report.ts';
import { askedOf, LANDOWNER, queryOf, type Search } from '../../../../../features/report/report-address.ts';
import { ReportForm } from '../../../../../features/report/report-form.tsx';
import { ReportLinks } from '../../../../../features/report/report-links.tsx';
import { partnersOf, standsOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { RowLink } from '../../../../../ui/row-link.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ reports }) => reports.landowner.title);

export default async function LandownerPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const asked = oneSubject(askedOf(await searchParams, LANDOWNER));
  const isAsked = asked['standId'] !== undefined || asked['partnerId'] !== undefined || asked['permissionId'] !== undefined;
  const [report, stands, partners, { today }, { reports: said }, t] = await Promise.all([
    isAsked ? readLandowner(programme, asked) : undefined, standsOf(programme), partnersOf(programme), workplaceOf(programme), getMessages(), getTranslations('reports.landowner'),
  ]);
  const { landowner } = said;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'reports'), words: said.title }]} />
      <PageHeading kind={said.kind}>{report ? t('titleOf', { name: report.subject.name }) : landowner.title}</PageHeading>
      <ReportForm
        label={landowner.choose} today={today} asOf={asked['asOf'] ?? today}
        choices={[
          { name: 'standId', label: landowner.stand, chosen: asked['standId'], none: landowner.chooseStand, choices: stands },
          { name: 'partnerId', label: landowner.partner, chosen: asked['partnerId'], none: landowner.choosePartner, choices: partners },
        ]}
      />
      {!isAsked && (
        <ul className="flex flex-wrap gap-x-6">
          {stands.map(({ id, name }) => <li key={id}><RowLink href={`${pageOf(programme, 'reports', 'landowner')}${queryOf({ standId: id })}`}>{name}</RowLink></li>)}
        </ul>
      )}
      {report && (
        <>
          <ReportLinks pdf={(paper) => `${pageOf(programme, 'reports', 'landowner', 'pdf')}${queryOf(asked, { paper })}`} csv={`${apiOf(programme, 'reports', 'landowner.csv')}${queryOf(asked)}`} />
          <AsOfDay {...report} />
          <div className="mb-8 grid max-w-prose gap-2">{landownerLines(report, t).map((line) => <p key={line} className="font-semibold">{line}</p>)}</div>
          {report.trees.length > 0 && <LandownerTables report={report} />}
          <Definitions heading={said.means} says={Object.values(landowner.definitions)} />
        </>
      )}
    </>
  );
}

/** The form has two lists; where both are chosen, the stand is meant. */
function oneSubject({ standId, partnerId, permissionId, ...rest }: Record<string, string>): Record<string, string> {
  if (standId !== undefined) return { ...rest, standId };
  if (partnerId !== undefined) return { ...rest, partnerId };
  return permissionId === undefined ? rest : { ...rest, permissionId };
}
