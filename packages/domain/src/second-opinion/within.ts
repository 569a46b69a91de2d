import { type About, type Basis, type Opinion, noEvidence, notTold } from './opinion.ts';
import { bothSides, ownRange } from './own-share.ts';
import type { PastSticking, StickingLine } from './question.ts';
import type { Range } from './species-row.ts';

interface Measured {
  readonly about: About;
  readonly of: (line: StickingLine) => number | undefined;
  readonly ofPast: (one: PastSticking) => number | undefined;
  readonly row: Range | undefined;
  readonly usual: Range | undefined;
}

/**
 * Is a measure within what is usual: by the species row, else the programme's own history, else common practice?
 *
 * Where none of the three speaks it is no evidence. What own cuttings of the same side did is told along.
 */
export function withinUsual(lines: readonly StickingLine[], past: readonly PastSticking[], { about, of, ofPast, row, usual }: Measured): Opinion {
  const told = lines.filter((line) => of(line) !== undefined);
  if (told.length === 0) return notTold(about);
  const [basis, range] = rangeFor(row, ownRange(past, ofPast), usual);
  const values = told.map((line) => of(line) ?? 0);
  const seen = { least: Math.min(...values), most: Math.max(...values) };
  if (range === undefined) return noEvidence(about, 'unknown', seen);

  const [lower, upper] = range;
  const facts = { ...seen, lower, upper };
  const below = told.filter((line) => (of(line) ?? lower) < lower);
  const above = told.filter((line) => (of(line) ?? upper) > upper);
  const odd = [...below, ...above];
  if (odd.length === 0) return { about, verdict: 'usual', basis, says: 'within', donors: [], facts };
  const says = below.length === 0 ? 'above' : above.length === 0 ? 'below' : 'outside';
  const isSo = (one: PastSticking) => {
    const value = ofPast(one);
    return value === undefined ? undefined : (below.length > 0 && value < lower) || (above.length > 0 && value > upper);
  };
  return { about, verdict: 'unusual', basis, says, donors: odd.length === lines.length ? [] : labelsOf(odd), facts, ...bothSides(past, isSo) };
}

function rangeFor(row: Range | undefined, own: Range | undefined, usual: Range | undefined): readonly [Basis, Range | undefined] {
  if (row) return ['species-row', row];
  if (own) return ['own-history', own];
  return usual ? ['common-practice', usual] : ['no-evidence', undefined];
}

/** Each tree once, in the order told. */
export const labelsOf = (lines: readonly StickingLine[]): string[] => [...new Set(lines.map(({ donorLabel }) => donorLabel))];
