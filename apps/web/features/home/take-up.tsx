import { WorkListInList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { RowLink } from '../../ui/row-link.tsx';

/** What a coordinator begins most often, one step from home; and the sheets that are still out on paper. */
export async function TakeUp({ programme }: { programme: string }) {
  const [lists, { home: said, workLists }, t] = await Promise.all([
    read(`${apiOf(programme, 'work-lists')}?limit=20`, z.array(WorkListInList)), getMessages(), getTranslations('home'),
  ]);
  const out = lists.filter(({ typed, lines }) => typed < lines).slice(0, 3);
  return (
    <nav aria-label={said.takeUp} className="not-on-paper mb-10">
      <ul className="grid grid-cols-2 gap-2 sm:grid-cols-3 sm:gap-3 [&_a]:h-full [&_a]:w-full [&_a]:px-3 [&_a]:text-center">
        {WAYS.map(([words, path]) => <li key={words}><ButtonLink look="quiet" href={pageOf(programme, ...path)}>{said.ways[words]}</ButtonLink></li>)}
      </ul>
      {out.length > 0 && (
        <ul className="mt-4 flex flex-wrap gap-x-6">
          {out.map(({ id, kind, madeAt, typed, lines }) => (
            <li key={id}><RowLink href={pageOf(programme, 'work-lists', id, 'type')}>{t('typeBack', { list: workLists.kinds[kind], day: sayDay(madeAt.slice(0, 10)), left: lines - typed })}</RowLink></li>
          ))}
        </ul>
      )}
    </nav>
  );
}

const WAYS = [
  ['stick', ['stick']], ['pot', ['bench', 'potting']], ['list', ['work-lists', 'new']], ['request', ['requests', 'new']],
  ['letter', ['reports', 'landowner']], ['trace', ['trace']],
] as const;
