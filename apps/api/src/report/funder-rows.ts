import type { FunderReport } from '@sprigline/contract';
import { plantedSurvival, type PlantedTrees } from '@sprigline/domain';
import type { Standing } from '../entry/standing.queries.ts';
import type { PlantedBatch } from './planted.queries.ts';

type Survival = Omit<FunderReport['totals'][number], 'taxon'>;

/** A batch with what the last look at it, on or before a day, found. */
export interface LookedAt extends PlantedBatch {
  readonly look: { readonly day: string; readonly alive: number; readonly notFound: number } | undefined;
}

/**
 * The last count or check of a batch that stands, up to a day. A count of the whole batch saw all there is;
 * what a check did not speak of was not looked at. A sample says nothing of the rest, so it is no look at the batch.
 */
export function lookedAt(batch: PlantedBatch, standing: ReadonlyMap<string, Standing>, asOf: string): LookedAt {
  const left = batch.planted - batch.dead - batch.givenOut;
  const looks = batch.looks.flatMap((id) => {
    const look = standing.get(id);
    return look && look.observedOn <= asOf ? [look] : [];
  });
  const last = looks.sort((a, b) => (a.observedOn === b.observedOn ? (a.id < b.id ? 1 : -1) : a.observedOn < b.observedOn ? 1 : -1)).find(({ said }) => said.kind === 'checked' || (said.kind === 'counted' && said.sampleOf === undefined));
  if (!last) return { ...batch, look: undefined };
  if (last.said.kind !== 'checked') return { ...batch, look: { day: last.observedOn, alive: left, notFound: 0 } };
  // Missed for the second time, they are among the lost already.
  const notFound = Math.min(last.said.notFound - (batch.missedAgain[last.id] ?? 0), left);
  return { ...batch, look: { day: last.observedOn, alive: Math.min(last.said.alive, left - notFound), notFound } };
}

/** One line of the report: sums over batches, and what follows from them. */
export function survivalOf(batches: readonly LookedAt[]): Survival {
  const { byUnit, rates, ...counts } = plantedSurvival(batches.map((batch): PlantedTrees => ({
    plotId: batch.plotId, donorId: batch.donorId ?? undefined, planted: batch.planted, dead: batch.dead, givenOut: batch.givenOut, look: batch.look,
  })));
  const checks = batches.flatMap(({ look }) => (look ? [look.day] : []));
  const ages = batches.flatMap(({ look, plantedOn }) => (look ? [daysBetween(plantedOn, look.day)] : []));
  return {
    ...counts, ...(rates && { rates }), ...(byUnit && { byUnit }),
    donors: new Set(batches.flatMap(({ donorId }) => donorId ?? [])).size,
    plots: new Set(batches.map(({ plotId }) => plotId)).size,
    ageDays: ages.length > 0 ? { least: Math.min(...ages), most: Math.max(...ages) } : null,
    plantedOn: ends(batches.map(({ plantedOn }) => plantedOn)),
    checkedOn: ends(checks),
  };
}

const daysBetween = (from: string, to: string): number => Math.max(0, Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000));

function ends(days: readonly string[]): { first: string; last: string } | null {
  const inOrder = [...days].sort();
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  return first !== undefined && last !== undefined ? { first, last } : null;
}
