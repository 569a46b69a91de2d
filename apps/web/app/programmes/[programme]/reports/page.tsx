import { getMessages } from 'next-intl/server';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Way } from '../../../../ui/way.tsx';

export const generateMetadata = titled(({ reports }) => reports.title);

const REPORTS = [
  { name: 'landowner', path: ['reports', 'landowner'], isForDesk: false },
  { name: 'funder', path: ['reports', 'funder'], isForDesk: false },
  { name: 'trace', path: ['trace'], isForDesk: false },
  { name: 'handover', path: ['reports', 'handover'], isForDesk: true },
] as const;

export default async function ReportsPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk }, { reports: said }] = await Promise.all([workplaceOf(programme), getMessages()]);
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <ul className="grid gap-4 sm:grid-cols-2">
        {REPORTS.filter(({ isForDesk }) => isDesk || !isForDesk).map(({ name, path }) => (
          <li key={name}>
            <Way href={pageOf(programme, ...path)} className="block h-full rounded-lg border-2 border-line bg-sheet p-5 no-underline hover:bg-lichen">
              <strong className="block text-lg underline">{said.list[name].title}</strong>
              <span className="mt-1 block text-ink-soft">{said.list[name].lead}</span>
            </Way>
          </li>
        ))}
      </ul>
    </>
  );
}
