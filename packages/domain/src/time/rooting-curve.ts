import { studentTQuantile } from '../survival/student-t-quantile.ts';
import { normalQuantile } from '../distribution/normal.ts';
import { DONORS_NEEDED } from '../survival/donor-ratio-interval.ts';
import { cameLate, type CurveMethod, type CuttingsOf, methodFor, occupancyOf, onDaysSeen, rootingShares, type RootingShares, WEEK } from './rooting-shares.ts';

export interface RootingStep extends RootingShares {
  /** Two-sided limits of `rooted`; missing where it is nothing, or all, and where nothing can be said. */
  readonly lower?: number;
  readonly upper?: number;
}

/** Weeks since sticking, with limits where they can be told. */
export interface WeekWithLimits {
  readonly week: number;
  readonly lower?: number;
  readonly upper?: number;
}

export interface RootingCurve {
  readonly method: CurveMethod;
  readonly isConverged: boolean;
  /** Whether limits know that cuttings of one tree fare together; with fewer than five trees they do not, and are too narrow. */
  readonly limitsBy: 'donors' | 'cuttings';
  readonly steps: readonly RootingStep[];
  /** Half of those that root, as far as it was seen, have roots. Missing where none ever rooted. */
  readonly halfOfRooting?: WeekWithLimits;
  /** Half of all have roots. Missing while they have not. */
  readonly halfOfAll?: WeekWithLimits;
  /** Share of all that at the end of the curve is neither rooted nor lost. */
  readonly neither: number;
}

/** As many parts as the trees are put into, each left out once: beyond it, more only costs time. */
const MOST_PARTS = 20;

/**
 * Share of cuttings that have rooted, week by week since sticking, with losses as the other end.
 *
 * Limits come from leaving out one tree after the other, or one part of twenty (delete-a-group jackknife), on the log odds
 * of the share, with Student's t on the parts - 1; how far the parts lie apart is read from the days seen, which needs no rounds. With fewer than five trees they are those of cuttings that fare
 * each by itself. A limit of a time is where the limit of the curve crosses a half.
 *
 * @param rows of cuttings; those that nobody has seen since they came are left out, and the few that came late, up to one in twenty,
 *   where all others came at the start
 * @param confidence two-sided, between 0 and 1
 * @throws DomainError `survival/not-a-level`
 *
 * Source: Hudgens MG, Satten GA, Longini IM (2001) Biometrics 57:74-80; Aalen OO, Johansen S (1978) Scand. J. Stat. 5:141-150;
 * Kott PS (2001) J. Off. Stat. 17:521-526; Brookmeyer R, Crowley J (1982) Biometrics 38:29-41; from memory.
 */
export function rootingCurve(rows: readonly CuttingsOf[], confidence = 0.95): RootingCurve {
  const watched = rows.filter(({ from, by }) => Math.ceil(by / WEEK) > Math.floor(from / WEEK));
  const method = methodFor(watched);
  const seen = method === 'intervals' ? watched.filter((row) => !cameLate(row)) : watched;
  if (seen.length === 0) return { method, isConverged: true, limitsBy: 'cuttings', steps: [], neither: 1 };
  const { shares, isConverged } = rootingShares(seen, method);
  const last = shares.at(-1);
  if (!last) return { method, isConverged, limitsBy: 'cuttings', steps: [], neither: 1 };

  const parts = partsOf(seen);
  const spread = parts.length < DONORS_NEEDED ? spreadOfCuttings(shares, seen, confidence) : spreadOfParts(shares, parts, seen, confidence);
  const steps = shares.map((step, at) => ({ ...step, ...limitsOn(step.rooted, spread.ofAll[at]!) }));
  const ofRooting = shares.map((step, at) => {
    const rooted = rootedOfRooting(shares, step.week);
    return { ...step, rooted, ...limitsOn(rooted, spread.ofRooting[at]!) };
  });
  const [halfOfRooting, halfOfAll] = [halfOf(ofRooting), halfOf(steps)];
  return {
    method, isConverged, limitsBy: parts.length < DONORS_NEEDED ? 'cuttings' : 'donors', steps, neither: Math.max(0, 1 - last.rooted - last.lost),
    ...(halfOfRooting && { halfOfRooting }), ...(halfOfAll && { halfOfAll }),
  };
}

/** Half-widths of the shares, quantile included, in the order of the steps. */
interface Spread {
  readonly ofAll: readonly number[];
  readonly ofRooting: readonly number[];
}

/** Trees in order of their names, dealt out one after the other. */
function partsOf(rows: readonly CuttingsOf[]): ReadonlySet<string>[] {
  const units = [...new Set(rows.map(({ unit }) => unit))].sort();
  const parts = Array.from({ length: Math.min(MOST_PARTS, units.length) }, () => new Set<string>());
  for (const [at, unit] of units.entries()) parts[at % parts.length]!.add(unit);
  return parts;
}

function spreadOfParts(shares: readonly RootingShares[], parts: readonly ReadonlySet<string>[], rows: readonly CuttingsOf[], confidence: number): Spread {
  const without = parts.map((part) => onDaysSeen(rows.filter(({ unit }) => !part.has(unit))));
  const all = onDaysSeen(rows);
  const t = studentTQuantile((1 + confidence) / 2, parts.length - 1);
  const width = (of: (shares: readonly RootingShares[], week: number) => number, week: number): number => {
    const whole = of(all, week);
    const squares = without.reduce((sum, one) => sum + (of(one, week) - whole) ** 2, 0);
    return t * Math.sqrt(((parts.length - 1) / parts.length) * squares);
  };
  return { ofAll: shares.map(({ week }) => width(rootedAt, week)), ofRooting: shares.map(({ week }) => width(rootedOfRooting, week)) };
}

function spreadOfCuttings(shares: readonly RootingShares[], rows: readonly CuttingsOf[], confidence: number): Spread {
  const z = normalQuantile((1 + confidence) / 2);
  const curve = occupancyOf(rows);
  const rooted = rows.reduce((sum, { end, plants }) => (end === 'rooted' ? sum + plants : sum), 0);
  return {
    ofAll: shares.map(({ week }) => z * (curve.findLast(({ time }) => time <= week)?.standardErrors[1] ?? 0)),
    ofRooting: shares.map(({ week }) => z * Math.sqrt((rootedOfRooting(shares, week) * (1 - rootedOfRooting(shares, week))) / Math.max(1, rooted))),
  };
}

const rootedAt = (shares: readonly RootingShares[], week: number): number => shares.findLast((step) => step.week <= week)?.rooted ?? 0;
const rootedOfRooting = (shares: readonly RootingShares[], week: number): number => rootedAt(shares, week) / (shares.at(-1)?.rooted || 1);

/** On the log odds, so that limits stay between nothing and all. */
function limitsOn(share: number, halfWidth: number): { lower?: number; upper?: number } {
  if (!(share > 1e-9 && share < 1 - 1e-9 && halfWidth > 0)) return {};
  const [odds, width] = [Math.log(share / (1 - share)), halfWidth / (share * (1 - share))];
  return { lower: 1 / (1 + Math.exp(width - odds)), upper: 1 / (1 + Math.exp(-width - odds)) };
}

/** Evenly within the region in which a half is reached; its limits at the far ends of the regions in which they reach it. */
function halfOf(steps: readonly RootingStep[]): WeekWithLimits | undefined {
  const at = steps.findIndex(({ rooted }) => rooted >= HALF);
  const step = steps[at];
  if (!step) return undefined;
  const before = steps[at - 1]?.rooted ?? 0;
  const week = step.since + ((step.week - step.since) * (0.5 - before)) / (step.rooted - before);
  // Where the curve has no limits it is all that can be told.
  const reached = (curve: (one: RootingStep) => number): RootingStep | undefined => steps.find((one) => curve(one) >= HALF);
  const [first, last] = [reached(({ rooted, upper = rooted }) => upper) ?? step, reached(({ rooted, lower = rooted }) => lower)];
  return { week, lower: first.since, ...(last && { upper: last.week }) };
}

/** A half, but for the dust of adding up. */
const HALF = 0.5 - 1e-12;
