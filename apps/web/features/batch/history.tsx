import type { Batch, PlaceInTree } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Section } from '../../ui/section.tsx';
import { AroundEntry } from './around-entry.tsx';
import { HistoryEntry } from './history-entry.tsx';
import { inTime } from './in-time.ts';
import { labelOf } from './line-nodes.ts';

interface HistoryProps {
  readonly programme: string;
  readonly batch: Batch;
  readonly zone: string;
  readonly places: readonly PlaceInTree[];
}

/** Everything that was said of a batch, who said it, and what the books made of it; with what happened where it stood. */
export function History({ programme, batch, zone, places }: HistoryProps) {
  const said = useMessages().batches;
  const names = namesIn(batch, places);
  return (
    <div id="history">
      <Section heading={said.history} lead={said.historyLead}>
        <ol className="max-w-3xl border-t border-line">
          {inTime(batch.history, batch.stays).map((told) => told.kind === 'entry'
            ? <HistoryEntry key={told.id} programme={programme} batchId={batch.id} item={told.item} zone={zone} nameOf={(id) => names.get(id)} />
            : <AroundEntry key={told.id} told={told} />)}
        </ol>
      </Section>
    </div>
  );
}

/** What batches of the line and places are called. */
function namesIn(batch: Batch, places: readonly PlaceInTree[]): Map<string, string> {
  const { line } = batch;
  return new Map([
    [batch.id, labelOf(batch)],
    ...places.map(({ id, name }) => [id, name] as const),
    ...[...line.ancestors, ...line.parts, ...line.children].map((one) => [one.id, labelOf(one)] as const),
  ]);
}
