import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

export type WildTree = 'standing' | 'notSeen' | 'dead' | 'unknown';

/** What is left of one donor (clone group). Leave out donors of which nobody told how many are rooted: unknown is not 0. */
export interface DonorHolding {
  readonly donorId: string;
  /** Rooted plants left now, at every stage together; a whole number. */
  readonly rootedNow: number;
  /** Rooted plants at earlier days of the caller's choice, say a season back; whole numbers, in any order. */
  readonly rootedEarlier: readonly number[];
  /** State of the wild tree; for a clone group, of the one that stands best. */
  readonly wildTree: WildTree;
  /** Places (houses, benches, sites; not trays) that hold plants of this donor. */
  readonly places: number;
}

/** The programme's own lines; there is no figure in the literature. */
export interface RiskLimits {
  /** This many rooted plants, or fewer, are few. A whole number, at least 1. */
  readonly fewRooted: number;
  /** Falling: at least this share of the highest earlier figure is gone. Above 0, at most 1. */
  readonly fallenBy: number;
}

/**
 * `none-rooted` and `few-rooted` exclude each other, as do `last-copies` (the wild tree is
 * dead) and `perhaps-last-copies` (it was looked for and not seen).
 */
export type Risk = 'none-rooted' | 'few-rooted' | 'falling' | 'one-place' | 'last-copies' | 'perhaps-last-copies';

export interface DonorAtRisk extends DonorHolding {
  readonly risks: readonly Risk[];
}

/**
 * Donors that may be lost soon, the most pressing first.
 *
 * A donor is listed when it has few rooted plants or none, when these are
 * falling, or when its wild tree is gone and all its plants stand in one place,
 * where one failed timer ends it. One place or a dead wild tree by itself is no
 * alarm, but is named beside the others. Unrooted cuttings are hope, not stock.
 *
 * @returns last copies first, then perhaps last copies, then by rooted plants left, then by id
 * @throws DomainError `diversity/not-a-count` for a negative or broken number
 * @throws DomainError `diversity/not-a-limit` for limits outside their ranges
 *
 * Source: common practice of the trade; keeping the same line in more than one
 * place follows the rule of duplicate holdings in conservation collections.
 */
export function donorsAtRisk(holdings: readonly DonorHolding[], limits: RiskLimits): readonly DonorAtRisk[] {
  refuseUnlessLimits(limits);
  return holdings
    .map((holding) => ({ ...holding, risks: risksOf(holding, limits) }))
    .filter(({ risks }) => isPressing(risks))
    .toSorted(
      (a, b) => rank(a) - rank(b) || a.rootedNow - b.rootedNow || (a.donorId < b.donorId ? -1 : 1),
    );
}

function risksOf(holding: DonorHolding, { fewRooted, fallenBy }: RiskLimits): Risk[] {
  const { rootedNow, rootedEarlier, wildTree, places } = holding;
  const odd = [rootedNow, places, ...rootedEarlier].find((n) => !isCount(n));
  if (odd !== undefined) {
    throw new DomainError('diversity/not-a-count', 'rooted plants and places are whole numbers', { number: odd });
  }
  const highest = rootedEarlier.reduce((a, b) => Math.max(a, b), 0);
  const risks: Risk[] = [];
  if (rootedNow === 0) risks.push('none-rooted');
  else if (rootedNow <= fewRooted) risks.push('few-rooted');
  if (highest > 0 && highest - rootedNow >= fallenBy * highest) risks.push('falling');
  if (places === 1) risks.push('one-place');
  if (wildTree === 'dead') risks.push('last-copies');
  if (wildTree === 'notSeen') risks.push('perhaps-last-copies');
  return risks;
}

function isPressing(risks: readonly Risk[]): boolean {
  const isShort = risks.some((risk) => risk === 'none-rooted' || risk === 'few-rooted' || risk === 'falling');
  return isShort || (risks.includes('one-place') && risks.some((risk) => risk.endsWith('last-copies')));
}

function rank({ risks }: DonorAtRisk): number {
  if (risks.includes('last-copies')) return 0;
  return risks.includes('perhaps-last-copies') ? 1 : 2;
}

function refuseUnlessLimits({ fewRooted, fallenBy }: RiskLimits): void {
  if (!isCount(fewRooted) || fewRooted === 0 || !(fallenBy > 0 && fallenBy <= 1)) {
    throw new DomainError('diversity/not-a-limit', 'few is a whole number of at least 1, fallen a share above 0', {
      fewRooted,
      fallenBy,
    });
  }
}
