import { looksLikeLabelCode, isLabelCode, keptLabel } from '@sprigline/domain';
import type { KeptPack } from '../../lib/phone/pack-shapes.ts';
import type { Made } from '../../lib/phone/made.ts';
import type { refusedLabel } from '../../lib/phone/relabel.ts';

type Refused = NonNullable<ReturnType<typeof refusedLabel>>;

/** Labels of donor trees that this phone knows, with the stand of each. */
export type TreesKnown = ReadonlyMap<string, string>;

export function treesKnown(pack: Pick<KeptPack, 'donorTrees' | 'stands'> | undefined, { donorTrees }: Pick<Made, 'donorTrees'>): TreesKnown {
  const stands = new Map(pack?.stands.map(({ id, name }) => [id, name]));
  return new Map([...donorTrees, ...(pack?.donorTrees ?? [])].map(({ label, standId }) => [label, stands.get(standId) ?? '']));
}

/** The next of the same kind that nobody here knows of: "SG-15" for "SG-14". Nothing where it ends in no number, or for labels that are printed. */
export function labelToSuggest({ label, of }: Refused, trees: TreesKnown): string {
  const [, stem, figures] = /^(.*?)(\d{1,9})$/.exec(label) ?? [];
  if (of !== 'donorTree' || stem === undefined || figures === undefined) return '';
  for (let n = Number(figures) + 1; ; n += 1) {
    const next = `${stem}${String(n).padStart(figures.length, '0')}`;
    if (!trees.has(next)) return next;
  }
}

export type LabelSlip = 'same' | 'none' | 'mistyped' | 'taken' | 'long';

const LONGEST = { plants: 40, label: 40, donorTree: 200 } as const;

/** What is wrong with the label instead, as far as this phone can know. Plants may go without one. */
export function labelSlip(typed: string, { label, of }: Refused, trees: TreesKnown): LabelSlip | undefined {
  const told = typed.trim();
  if (told === '') return of === 'plants' ? undefined : 'none';
  if (told.length > LONGEST[of]) return 'long';
  if (told === label) return 'same';
  if (of === 'donorTree') return trees.has(told) ? 'taken' : undefined;
  return looksLikeLabelCode(told) && !isLabelCode(keptLabel(told)) ? 'mistyped' : undefined;
}
