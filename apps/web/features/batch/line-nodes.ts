import type { Batch, BatchInLine, Stage } from '@sprigline/contract';

/** One thing on the way from the wild tree to the site. */
export type LineNode =
  | { readonly kind: 'stand'; readonly id: string; readonly name: string }
  | { readonly kind: 'donorTree'; readonly id: string; readonly label: string }
  | { readonly kind: 'candidates'; readonly labels: readonly string[] }
  | { readonly kind: 'trip'; readonly id: string; readonly day: string; readonly cuttings: number | undefined }
  | { readonly kind: 'sticking'; readonly day: string | null; readonly recipe: string | undefined; readonly generation: number; readonly isSecondTry: boolean }
  | ({ readonly kind: 'batch'; readonly isHere: boolean } & Plants);

export interface Plants {
  readonly id: string;
  readonly label: string;
  readonly stage: Stage;
  readonly day: string;
  readonly plants: number;
  readonly place: string | undefined;
}

export interface Line {
  /** From the stand to this batch, in the order of time. */
  readonly trunk: readonly LineNode[];
  /** What a mixed batch was made of. */
  readonly parts: readonly (Plants & { readonly n: number })[];
  readonly children: readonly Plants[];
}

export function lineOf(batch: Batch): Line {
  const { stand, donorTree, candidates, trip, bundle, sticking, ancestors, parts, children } = batch.line;
  const trunk: LineNode[] = [];
  if (stand) trunk.push({ kind: 'stand', ...stand });
  if (donorTree) trunk.push({ kind: 'donorTree', ...donorTree });
  else if (candidates.length > 0) trunk.push({ kind: 'candidates', labels: candidates.map(({ label }) => label) });
  if (trip) trunk.push({ kind: 'trip', id: trip.id, day: trip.wentOn, cuttings: bundle?.cuttings });
  if (sticking) {
    const { stuckOn, recipe, generation, secondTryOfId } = sticking;
    trunk.push({ kind: 'sticking', day: stuckOn, recipe: recipe?.name, generation, isSecondTry: secondTryOfId !== null });
  }
  trunk.push(...ancestors.map((one) => ({ kind: 'batch' as const, isHere: false, ...plantsOf(one) })));
  trunk.push({ kind: 'batch', isHere: true, ...plantsOf(batch) });
  return { trunk, parts: parts.map((part) => ({ ...plantsOf(part), n: part.n })), children: children.map(plantsOf) };
}

export const plantsOf = ({ id, label, stage, openedOn, balance, place }: BatchInLine): Plants => ({
  id, label: labelOf({ id, label }), stage, day: openedOn, plants: balance, place: place?.name,
});

/** A batch without a label is called by the end of its id. */
export const labelOf = ({ id, label }: { readonly id: string; readonly label: string | null }): string => label ?? `…${id.slice(-6)}`;
