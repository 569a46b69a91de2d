import { getMessages, getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import { readTrace } from '../../../../features/trace/read-trace.ts';
import { askedIn, ON_A_PAGE, queryOf, type Search } from '../../../../features/trace/trace-address.ts';
import { TraceHead } from '../../../../features/trace/trace-head.tsx';
import { TraceStart } from '../../../../features/trace/trace-start.tsx';
import { TraceTables } from '../../../../features/trace/trace-tables.tsx';
import { batchWithLabel } from '../../../../lib/batch-with-label.ts';
import { placesOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Trail } from '../../../../ui/trail.tsx';

export const generateMetadata = titled(({ trace }) => trace.title);

export default async function TracePage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const search = await searchParams;
  const asked = askedIn(search);
  if (!asked) return <Start programme={programme} label={typeof search['label'] === 'string' ? search['label'].trim() : ''} />;

  const [trace, { isDesk }, { trace: said }, t] = await Promise.all([readTrace(programme, asked, ON_A_PAGE), workplaceOf(programme), getMessages(), getTranslations('trace')]);
  const pdf = (paper: string) => `${pageOf(programme, 'trace', 'pdf')}${queryOf(asked, { paper })}`;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'trace'), words: said.another }]} />
      <PageHeading kind={said.kind} act={isDesk && trace.sums.plants > 0 && <ButtonLink href={`${pageOf(programme, 'trace', 'hold')}${queryOf(asked)}`}>{said.hold}</ButtonLink>}>
        {t(`subjects.${trace.subject.kind}`, { name: trace.subject.name })}
      </PageHeading>
      <TraceHead programme={programme} trace={trace} />
      <TraceTables programme={programme} trace={trace} />
      <p className="not-on-paper flex flex-wrap gap-x-6">
        {[[pdf('a4'), said.print], [pdf('letter'), said.printLetter], [`${apiOf(programme, 'trace.csv')}${queryOf(asked, { limit: '20000' })}`, said.csv]].map(([href, words]) => (
          <a key={href} href={href} className="inline-flex min-h-8 items-center underline">{words}</a>
        ))}
      </p>
    </>
  );
}

/** Where nothing is asked for yet. A label leads on to its batch. */
async function Start({ programme, label }: { programme: string; label: string }) {
  const found = await batchWithLabel(programme, label);
  if (found) redirect(`${pageOf(programme, 'trace')}${queryOf({ batchId: found })}`);
  const [places, { trace: said }] = await Promise.all([placesOf(programme), getMessages()]);
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <TraceStart places={places} unknownLabel={label === '' ? undefined : label} />
    </>
  );
}
