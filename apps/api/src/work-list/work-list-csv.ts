import type { WorkList } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

const HEADINGS = ['line', 'label', 'place', 'rows', 'donor tree', 'stand', 'species', 'stage', 'alive', 'rooted', 'rooted told on', 'stuck on', 'container', 'held', 'typed back'];

/** A sheet for somebody who works with a spreadsheet; the numbers are those of the paper. */
export function workListAsCsv({ lines }: WorkList): string {
  return csvOf(HEADINGS, lines.map(({ number, batch, path, typed }) => [
    number, batch.label ?? undefined, path.join(' > '), batch.rows ?? undefined, batch.donorTree?.label, batch.stand?.name, batch.taxon?.name, batch.stage,
    batch.balance, batch.rootedNow ?? undefined, batch.rootedOn ?? undefined, batch.stuckOn ?? undefined, batch.container ?? undefined,
    batch.held ? 'yes' : 'no', typed ? 'yes' : 'no',
  ]));
}
