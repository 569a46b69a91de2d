import { LeaveOrCall, ReadingChoices } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { Grounds } from '../../../../../features/leave-or-call/grounds.tsx';
import { TraysTable } from '../../../../../features/leave-or-call/trays-table.tsx';
import { AsOf } from '../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../features/reading/chosen-words.tsx';
import { FilterForm } from '../../../../../features/reading/filter-form.tsx';
import { chosenIn, queryOf, type Search } from '../../../../../features/reading/reading-address.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Caution } from '../../../../../ui/caution.tsx';
import { Empty } from '../../../../../ui/empty.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface LeaveOrCallPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<Search>;
}

export const generateMetadata = titled(({ leaveOrCall }) => leaveOrCall.title);

/** As many as one looks through at a time; all, when asked for. */
const A_PART = '60';
const MOST = '500';

export default async function LeaveOrCallPage({ params, searchParams }: LeaveOrCallPageProps) {
  const { programme } = await params;
  const search = await searchParams;
  const chosen = chosenIn(search);
  const limit = search['all'] === 'yes' ? MOST : A_PART;
  const [reading, choices, { leaveOrCall: said, readings }, t] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'leave-or-call')}${queryOf({ ...chosen, limit })}`, LeaveOrCall),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices),
    getMessages(), getTranslations('leaveOrCall'),
  ]);
  const { trays, inAll, grounds } = reading;
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'readings')}${queryOf(chosen)}`, words: readings.title }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings', 'leave-or-call')} />
      <ChosenWords choices={choices} chosen={chosen} />
      <AsOf {...reading} />
      {trays.length === 0 ? <Empty>{said.empty}</Empty> : (
        <>
          <div className="mb-6"><Caution>{said.caution}</Caution></div>
          <TraysTable programme={programme} trays={trays} />
          {inAll > trays.length && limit === A_PART && <div className="mt-6"><ButtonLink look="quiet" href={queryOf({ ...chosen, all: 'yes' })}>{t('more', { shown: trays.length, n: inAll })}</ButtonLink></div>}
          <Grounds grounds={grounds} />
          <a href={`${apiOf(programme, 'readings', 'leave-or-call.csv')}${queryOf(chosen)}`} className="not-on-paper inline-flex min-h-8 items-center text-sm underline">{said.csv}</a>
        </>
      )}
    </>
  );
}
