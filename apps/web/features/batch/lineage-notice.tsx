import type { Batch } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';

/** Below the family line: that lines are joined here, in loud words; or the way to say of which tree it is. */
export function LineageNotice({ programme, batch: { id, isMixed, line }, isDesk }: { programme: string; batch: Batch; isDesk: boolean }) {
  const { batches: said, origins } = useMessages();
  if (isMixed) {
    return (
      <aside className="mb-12 max-w-prose rounded-md border-4 border-rust bg-rust-wash p-4" aria-labelledby="mixed-notice">
        <h2 id="mixed-notice" className="text-xl text-rust">{said.mixedTitle}</h2>
        <p className="mt-1">{said.mixedLead}</p>
        <p className="not-on-paper mt-3"><ButtonLink look="quiet" href={pageOf(programme, 'batches', id, 'identify')}>{said.acts.identify}</ButtonLink></p>
      </aside>
    );
  }
  if (!line.sticking || !isDesk) return null;
  return <p className="not-on-paper mb-12"><ButtonLink look="quiet" href={pageOf(programme, 'stickings', line.sticking.id)}>{origins.way}</ButtonLink></p>;
}
