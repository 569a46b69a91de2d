/** Both ends of an interval on a share: unitless, 0 <= lower <= upper <= 1. */
export interface Interval {
  readonly lower: number;
  readonly upper: number;
}
