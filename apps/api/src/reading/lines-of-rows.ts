import type { ReadingLine, ReadingLines, ReadingPart } from '@sprigline/contract';
import { STAGES, survivalFunnel } from '@sprigline/domain';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import type { LineRow } from './line.queries.ts';

/** A row with its rates. What is unsure is read from sums of all donors: who they are, no line says. */
export function lineOf({ stages, ...head }: LineRow, atRisk: number): ReadingLine {
  const funnel = survivalFunnel(stages.map(({ deaths, donors: _, ...tally }) => ({ ...tally, died: { 'of whatever cause': deaths } })));
  const donorsAt = new Map(stages.map(({ stage, donors }) => [stage, donors]));
  return {
    ...head,
    here: funnel.reduce((sum, { here }) => sum + here, 0),
    planted: funnel.find(({ stage }) => stage === 'planted')?.here ?? 0,
    atRisk,
    undecidedShare: funnel[0]?.survival?.undecidedShare ?? null,
    stages: STAGES.map((stage, at) => ({ stage, plants: funnel[at]?.reached ?? 0, donors: donorsAt.get(stage) ?? 0 })),
  };
}

/** What needs eyes first: donor trees at risk, then lost ones, then by name. */
const orderOf = ({ atRisk, donors, name, key }: ReadingLine): readonly [number, number, string, string] => [-atRisk, donors.left - donors.came, name, key];

function compare(a: readonly (string | number)[], b: readonly (string | number)[]): number {
  const at = a.findIndex((value, index) => value !== b[index]);
  if (at < 0) return 0;
  return (a[at] ?? '') < (b[at] ?? '') ? -1 : 1;
}

/** One part of the lines in their order; what comes after a line is found although that line may be gone by then. */
export function partOfLines(lines: readonly ReadingLine[], { after, limit }: Pick<ReadingPart, 'after' | 'limit'>): Part<ReadingLine> {
  const [risk, lost, name = '', key = ''] = keysAfter(after, 4) ?? [];
  const sorted = lines.toSorted((a, b) => compare(orderOf(a), orderOf(b)));
  const rest = risk === undefined ? sorted : sorted.filter((line) => compare(orderOf(line), [Number(risk), Number(lost), name, key]) > 0);
  return partOf(rest.slice(0, limit + 1), limit, (line) => orderOf(line).map(String));
}

export function sumsOf(lines: readonly ReadingLine[]): ReadingLines['inAll'] {
  const sum = (of: (line: ReadingLine) => number): number => lines.reduce((all, line) => all + of(line), 0);
  return { lines: lines.length, here: sum(({ here }) => here), planted: sum(({ planted }) => planted), atRisk: sum(({ atRisk }) => atRisk) };
}
