import type { Batch } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { actsFor } from './acts.ts';

/** What can be done with a batch: what its stage is for first, the rest behind. */
export function BatchActs({ programme, batch: { id, stage, held, isMixed } }: { programme: string; batch: Batch }) {
  const { batches: said, labels, scan, sorting, treatments } = useMessages();
  const acts = actsFor({ stage, held, isMixed }).map((act) => ({ act: act as string, href: pageOf(programme, 'batches', id, act), words: said.acts[act] }));
  // Sorting says at once what else takes four pages.
  if ((stage === 'cutting' || stage === 'liner') && !held) acts.splice(1, 0, { act: 'sort', href: pageOf(programme, 'batches', id, 'sort'), words: sorting.act });
  acts.push({ act: 'treat', href: `${pageOf(programme, 'treatments', 'new')}?batchId=${id}`, words: treatments.add });
  acts.push({ act: 'relabel', href: pageOf(programme, 'batches', id, 'relabel'), words: scan.relabel.title });
  acts.push({ act: 'labels', href: `${pageOf(programme, 'labels', 'print')}?of=batches&ids=${id}`, words: labels.print });
  const [first, second, third, ...rest] = acts;
  return (
    <nav aria-label={said.actsTitle} className="not-on-paper mb-12 grid gap-3">
      {held && <p className="max-w-prose">{said.heldLead}</p>}
      <div className="flex flex-wrap gap-3">
        {[first, second, third].map((one, at) => one && <ButtonLink key={one.act} look={at === 0 ? 'main' : 'quiet'} href={one.href}>{one.words}</ButtonLink>)}
      </div>
      <details>
        <summary className="inline-flex min-h-14 cursor-pointer items-center font-semibold underline">{said.moreActs}</summary>
        <ul className="mt-2 flex flex-wrap gap-2">
          {rest.map(({ act, href, words }) => (
            <li key={act}><ButtonLink look="quiet" href={href}>{words}</ButtonLink></li>
          ))}
        </ul>
      </details>
    </nav>
  );
}
