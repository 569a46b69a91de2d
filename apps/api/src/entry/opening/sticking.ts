import type { Saying as Said } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownSticking } from '../pages/page-rows.ts';
import { batchIn } from './from-batches.ts';
import type { Opening, OpeningEntry } from './opened.ts';
import { openOrJoin } from './target-batch.ts';

/** Of which donor tree and species plants are, and on whose land that tree stands. */
type Descent = Pick<KnownSticking, 'donorTreeId' | 'taxonId' | 'generation' | 'standPartners'>;

/** One sticking may fill several trays: then each of them names it, and must be of the same donor tree. */
export function stuck(said: Extract<Said, { kind: 'stuck' }>, entry: OpeningEntry): Opening {
  const descent = descentOf(said, entry.pages);
  const { stickingId, batchId, placeId, bundleId, fromBatchId, recipeVersionId } = said;
  const sticking = openSticking({ id: stickingId, bundleId, fromBatchId, recipeVersionId, stuckOn: entry.observedOn, ...descent }, entry);
  const { standPartners } = descent;
  return { sticking, ...openOrJoin({ batchId, stage: 'cutting', stickingId, placeId, standPartners }, said, entry) };
}

export function received(said: Extract<Said, { kind: 'received' }>, entry: OpeningEntry): Opening {
  const { stickingId, batchId, placeId, recipeVersionId, stuckOn, stage } = said;
  // A return is of a sticking that is there: what it is of needs no telling.
  const there = entry.pages.stickings.get(stickingId);
  const descent = there ?? descentOf(said, entry.pages);
  const sticking = there ? undefined : openSticking({ id: stickingId, recipeVersionId, stuckOn, ...descent }, entry);
  const { standPartners } = descent;
  return {
    sticking,
    candidates: sticking && said.donorTreeId === undefined ? said.candidates : [],
    ...openOrJoin({ batchId, stage, stickingId, placeId, standPartners }, said, entry),
  };
}

/** A second try: another sticking of the same donor tree. */
export function restuck(said: Extract<Said, { kind: 'restuck' }>, entry: OpeningEntry): Opening {
  const parent = batchIn(entry.pages, said.batchId);
  const first = entry.pages.stickings.get(parent.stickingId ?? '');
  if (!first) throw new DomainError('batch/other-sticking', 'plants of a mixed batch have to be identified before they are stuck again');

  const { stickingId, toBatchId: batchId, placeId, recipeVersionId } = said;
  const { donorTreeId, taxonId, generation, standPartners } = first;
  const descent = { donorTreeId, taxonId, generation, standPartners };
  const sticking = openSticking({ id: stickingId, recipeVersionId, secondTryOfId: first.id, stuckOn: entry.observedOn, ...descent }, entry);
  return { sticking, ...openOrJoin({ batchId, stage: 'cutting', stickingId, parent, placeId, standPartners }, said, entry) };
}

/** @throws DomainError `batch/other-sticking` when the sticking is there and of another donor tree */
function openSticking(told: Omit<KnownSticking, 'openingEntryId'>, { id, pages }: OpeningEntry): KnownSticking | undefined {
  const there = pages.stickings.get(told.id);
  if (!there) return { ...told, openingEntryId: id };
  // A bundle that was determined anew since is the same bundle still: another tray of it joins.
  const isOfOneBundle = there.bundleId !== undefined && there.bundleId === told.bundleId;
  if (there.donorTreeId !== told.donorTreeId && there.openingEntryId !== id && !isOfOneBundle) {
    throw new DomainError('batch/other-sticking', 'that sticking is of another donor tree');
  }
  return undefined;
}

interface ToldOrigin {
  readonly bundleId?: string | undefined;
  readonly donorTreeId?: string | undefined;
  readonly fromBatchId?: string | undefined;
  readonly candidates?: readonly string[] | undefined;
  readonly taxonId?: string | undefined;
}

/** @throws DomainError `batch/taxon-needed` when nothing told says which species they are */
function descentOf(told: ToldOrigin, pages: OpenPages): Descent {
  if (told.fromBatchId !== undefined) return cutFrom(told.fromBatchId, pages);

  const donorTreeId = told.donorTreeId ?? (told.bundleId && pages.record('bundle', told.bundleId)?.donor_tree_id);
  const possible = (donorTreeId ? [donorTreeId] : (told.candidates ?? [])).flatMap((id) => pages.record('donor_tree', id) ?? []);
  const taxonId = told.taxonId ?? possible[0]?.taxon_id;
  if (taxonId === undefined) throw new DomainError('batch/taxon-needed', 'neither a donor tree nor a species was named');

  const standPartners = [...new Set(possible.flatMap(({ partner_id }) => partner_id ?? []))];
  return { donorTreeId, taxonId, generation: 1, standPartners };
}

/** Cuttings of a nursery plant are copies of the same wild tree, one generation on. */
function cutFrom(batchId: string, pages: OpenPages): Descent {
  const mother = pages.stickings.get(batchIn(pages, batchId).stickingId ?? '');
  if (!mother) throw new DomainError('batch/taxon-needed', 'a mixed batch does not say which donor tree its cuttings are of');

  const { donorTreeId, taxonId, standPartners } = mother;
  return { donorTreeId, taxonId, standPartners, generation: mother.generation + 1 };
}
