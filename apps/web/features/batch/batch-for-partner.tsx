import type { Batch } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { BatchFacts } from './batch-facts.tsx';
import { FamilyLine } from './family-line.tsx';
import { partnersAct } from './partners-act.ts';

interface BatchForPartnerProps {
  readonly programme: string;
  readonly batch: Batch;
  readonly rootedMeans: string;
  /** What they have just written of it: they see no history that would tell. */
  readonly wrote: string | undefined;
}

/** What a partner is shown of a batch, and the one thing that they may write of it, where there is one. */
export function BatchForPartner({ programme, batch, rootedMeans, wrote }: BatchForPartnerProps) {
  const { batches: said } = useMessages();
  const act = partnersAct(batch);
  return (
    <>
      {(wrote === 'check' || wrote === 'count') && <p role="status" className="mb-6 font-semibold">{said.ofOurs.wrote[wrote]}</p>}
      {act && <nav aria-label={said.actsTitle} className="not-on-paper mb-12"><ButtonLink href={pageOf(programme, 'batches', batch.id, act)}>{said.acts[act]}</ButtonLink></nav>}
      <FamilyLine programme={programme} batch={batch} />
      <BatchFacts programme={programme} batch={batch} rootedMeans={rootedMeans} isOpen={false} />
    </>
  );
}
