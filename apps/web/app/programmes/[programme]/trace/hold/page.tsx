import { getMessages } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { besideToHold, HoldChoices, MOST_HELD, toHold } from '../../../../../features/trace/hold-choices.tsx';
import { holdTraced } from '../../../../../features/trace/hold-traced.action.ts';
import { readTrace } from '../../../../../features/trace/read-trace.ts';
import { askedIn, queryOf, type Search } from '../../../../../features/trace/trace-address.ts';
import { peopleOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { SAYING } from '../../../../../lib/entry-said.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { Caution } from '../../../../../ui/caution.tsx';
import { TextField } from '../../../../../ui/form/text-field.tsx';
import { EntryForm } from '../../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ trace }) => trace.holdPage.title);

export default async function HoldTracedPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const asked = askedIn(await searchParams);
  if (!asked) notFound();
  const [trace, workplace, people, { trace: { holdPage: said, title } }] = await Promise.all([
    readTrace(programme, asked, MOST_HELD), workplaceOf(programme), peopleOf(programme), getMessages(),
  ]);
  const query = queryOf(asked);
  const isTooMuch = trace.isCut && trace.sums.batches > MOST_HELD;
  const isNothing = toHold(trace).length + besideToHold(trace).length === 0;
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'trace')}${query}`, words: `${title}: ${trace.subject.name}` }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <div className="grid gap-6">
        <Caution>{said.caution}</Caution>
        {isTooMuch && <p>{said.tooMany}</p>}
        {!isTooMuch && isNothing && <p>{said.nothing}</p>}
        {!isTooMuch && !isNothing && (
          <EntryForm
            action={holdTraced.bind(null, programme, query)}
            fields={{ reason: said.reason, sample: said.sample, batchIds: said.line }}
            send={said.send}
            today={workplace.today}
            zone={workplace.zone}
            people={people.filter((person) => person.id !== workplace.me.personId)}
          >
            <TextField name={`${SAYING}reason`} hint={said.reasonHint} />
            <TextField name={`${SAYING}sample`} isOptional hint={said.sampleHint} />
            <HoldChoices trace={trace} />
          </EntryForm>
        )}
      </div>
    </>
  );
}
