import { DomainError } from '../errors.ts';

/** So many plants are labelled in one act at most: as many entries as one request takes. */
export const MOST_IN_ONE_ACT = 500;

/**
 * Labels as they are written on a list: runs such as `T213…T412` (or with `..` or `-`
 * between), single codes, or both, with commas, semicolons, tabs or line ends between.
 * Figures of a run keep the width of its first code: `T008…T012`.
 *
 * @throws DomainError `planting/labels-do-not-run` for a run with two stems, or backwards
 * @throws DomainError `planting/named-twice`, `planting/too-many`
 */
export function labelRun(text: string): string[] {
  const labels = text.split(/[\n\t,;]+/).map((part) => part.trim()).filter(Boolean).flatMap(labelsOf);
  return refuseTwice(refuseTooMany(labels));
}

function labelsOf(part: string): string[] {
  const [, stem = '', from, between = '', lastStem, to] = /^(.*?)(\d+)\s*(…|\.{2,3}|-|–)\s*(.*?)(\d+)$/.exec(part) ?? [];
  if (from === undefined || to === undefined) return [part];
  const isPlainRun = between !== '-';
  // A hyphen may stand within a code, as in CR-1/25-3: only between two whole codes it makes a run.
  if (lastStem !== stem && !(isPlainRun && lastStem === '')) {
    if (isPlainRun) throw new DomainError('planting/labels-do-not-run', `${part} names two kinds of labels: write the same letters at both ends`, { part });
    return [part];
  }
  const [first, last] = [Number(from), Number(to)];
  if (last < first) throw new DomainError('planting/labels-do-not-run', `${part} runs backwards: write the lower number first`, { part });
  if (last - first >= MOST_IN_ONE_ACT) throw tooMany(last - first + 1);
  return Array.from({ length: last - first + 1 }, (_, at) => `${stem}${String(first + at).padStart(from.length, '0')}`);
}

/**
 * Positions on a plot: a grid such as `10 x 20` (rows by columns: `r1 c1`, `r1 c2`, …),
 * or a list, with commas, semicolons, tabs or line ends between.
 *
 * @throws DomainError `planting/named-twice`, `planting/too-many`
 */
export function positionRun(text: string): string[] {
  const [, rows, columns] = /^\s*(\d{1,4})\s*[x×*]\s*(\d{1,4})\s*$/i.exec(text) ?? [];
  if (rows === undefined || columns === undefined) {
    return refuseTwice(refuseTooMany(text.split(/[\n\t,;]+/).map((part) => part.trim()).filter(Boolean)));
  }
  if (Number(rows) * Number(columns) > MOST_IN_ONE_ACT) throw tooMany(Number(rows) * Number(columns));
  return Array.from({ length: Number(rows) * Number(columns) }, (_, at) => `r${Math.floor(at / Number(columns)) + 1} c${(at % Number(columns)) + 1}`);
}

/** One plant of a batch, with the label that it gets and the position that it stands at. */
export interface Tagged {
  readonly batchId: string;
  readonly label: string;
  readonly position?: string | undefined;
}

/**
 * Gives each plant its label and its position: batch after batch, in the order of the lists.
 *
 * @param parts how many of which batch are planted
 * @param positions as many as plants, or none
 * @throws DomainError `planting/no-plants`, `planting/too-many`
 * @throws DomainError `planting/not-as-many` when labels or positions are more or fewer than plants
 */
export function tagPlants(parts: readonly { readonly batchId: string; readonly n: number }[], labels: readonly string[], positions: readonly string[]): Tagged[] {
  const plants = parts.flatMap(({ batchId, n }) => Array.from({ length: n }, () => batchId));
  if (plants.length === 0) throw new DomainError('planting/no-plants', 'say how many of which batch are planted');
  refuseTooMany(plants);
  if (labels.length !== plants.length || (positions.length > 0 && positions.length !== plants.length)) {
    throw new DomainError('planting/not-as-many', `${plants.length} plants, ${labels.length} labels, ${positions.length} positions`, {
      plants: plants.length, labels: labels.length, positions: positions.length,
    });
  }
  return plants.map((batchId, at) => ({ batchId, label: labels[at] ?? '', position: positions[at] }));
}

const tooMany = (n: number): DomainError => new DomainError('planting/too-many', `${n} at once: take ${MOST_IN_ONE_ACT} at most, plot by plot`, { n });

function refuseTooMany<T>(list: T[]): T[] {
  if (list.length > MOST_IN_ONE_ACT) throw tooMany(list.length);
  return list;
}

function refuseTwice(list: string[]): string[] {
  const seen = new Set<string>();
  for (const one of list) {
    // Capitals of a label mean nothing.
    const same = one.toLowerCase();
    if (seen.has(same)) throw new DomainError('planting/named-twice', `${one} stands twice in the list`, { name: one });
    seen.add(same);
  }
  return list;
}
