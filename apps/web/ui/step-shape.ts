import { scaleLinear } from 'd3-scale';

export interface ShareStep {
  /** The share rose after this and by `at`; the same where it rose at once. */
  readonly since: number;
  readonly at: number;
  /** Between 0 and 1. */
  readonly share: number;
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

export interface StepShape {
  readonly line: string;
  /** Between the limits; empty where there are none. */
  readonly band: string;
}

/** How high the picture reaches, in tenths: the highest share or limit, rounded up. */
export function topOf(series: readonly { readonly steps: readonly ShareStep[] }[]): number {
  const most = Math.max(0, ...series.flatMap(({ steps }) => steps.map(({ share, upper }) => Math.max(share, upper ?? 0))));
  return Math.min(1, Math.max(0.1, Math.ceil(most * 10 - 1e-9) / 10));
}

/**
 * One rising line from nothing on, in per cent of the width and of the height. It slopes where nobody saw when it rose.
 *
 * @param steps in order, shares never falling
 * @param until where the line ends
 * @param width what the whole width stands for, above 0
 */
export function stepShape(steps: readonly ShareStep[], until: number, width: number, top: number): StepShape {
  const [x, y] = [scaleLinear([0, width], [0, 100]), scaleLinear([0, top], [100, 0])];
  const corner = (at: number, share: number): string => `${round(x(at))},${round(y(share))}`;
  const rising = (of: (step: ShareStep) => number): string[] => {
    let before = 0;
    const corners = steps.flatMap((step) => {
      const share = of(step);
      if (share <= before) return [];
      const both = [corner(step.since, before), corner(step.at, share)];
      before = share;
      return both;
    });
    return [corner(0, 0), ...corners, corner(until, before)];
  };
  const hasLimits = steps.some(({ lower }) => lower !== undefined);
  const upper = rising(({ upper: limit, share }) => limit ?? share);
  const lower = rising(({ lower: limit, share }) => limit ?? share);
  return { line: `M${rising(({ share }) => share).join('L')}`, band: hasLimits ? `M${[...upper, ...lower.toReversed()].join('L')}Z` : '' };
}

const round = (per: number): number => Math.round(per * 100) / 100;
