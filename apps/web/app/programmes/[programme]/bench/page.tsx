import { getMessages } from 'next-intl/server';
import { JOBS } from '../../../../features/bench/jobs.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Card } from '../../../../ui/card.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

export const generateMetadata = titled(({ bench }) => bench.title);

export default async function BenchPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const { bench: said } = await getMessages();
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <ul className="grid gap-4 sm:grid-cols-2">
        {JOBS.map((job) => (
          <li key={job}>
            <Card>
              <p className="mb-4">{said.leads[job]}</p>
              <ButtonLink look="quiet" href={pageOf(programme, 'bench', job)}>{said.jobs[job]}</ButtonLink>
            </Card>
          </li>
        ))}
      </ul>
    </>
  );
}
