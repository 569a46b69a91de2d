import type { DespatchNote } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** A row a batch. Plants taken back since are rows of 0. */
export const despatchAsCsv = ({ goneOn, to, place, taxon, stage, lines }: DespatchNote): string =>
  csvOf(
    ['batch', 'species', 'stage', 'plants', 'donor tree', 'stand', 'stuck on', 'container', 'label there', 'gone on', 'to', 'place'],
    lines.map((line) => [
      line.label ?? undefined, taxon, stage, line.n, line.donorTree?.label, line.stand?.name, line.stuckOn ?? undefined, line.container ?? undefined,
      line.toBatch?.label ?? undefined, goneOn, to, place ?? undefined,
    ]),
  );
