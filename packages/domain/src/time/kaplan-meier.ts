import { normalQuantile } from '../distribution/normal.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import { type Followed, momentsOf } from './followed.ts';

/** How limits are drawn: on the share itself, on its logarithm, or on the logarithm of minus its logarithm. */
export type LimitsBy = 'plain' | 'log' | 'log-log';

/** The curve from this time on, until the next step. */
export interface SurvivalStep {
  readonly time: number;
  readonly atRisk: number;
  readonly events: number;
  readonly censored: number;
  /** Share to whom it has not happened, 0 to 1. */
  readonly surviving: number;
  /** Greenwood's standard error of `surviving`; 0 once nobody is left. */
  readonly standardError: number;
  /** Two-sided limits; both missing once nobody is left and the formula says nothing. */
  readonly lower?: number;
  readonly upper?: number;
}

export interface KaplanMeier {
  readonly steps: readonly SurvivalStep[];
  /** First time by which it has happened to half; missing while it has not. */
  readonly median?: number;
  /** Limits of the median, where the limits of the curve reach a half; missing where they don't. */
  readonly medianLower?: number;
  readonly medianUpper?: number;
}

/**
 * Kaplan-Meier curve: the share to whom something has not happened yet, although many
 * are still watched and some came late.
 *
 * Plants that enter late count only from then on. If all of a few early ones meet the event, the
 * curve falls to nothing and stays there: with late entry, look at `atRisk`.
 *
 * @param followed plants in groups; counts as weights
 * @param limitsBy 'log-log' stays inside 0 to 1, also for few plants
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError as `momentsOf`; `survival/not-a-level`
 *
 * Source: Kaplan EL, Meier P (1958) J. Am. Stat. Assoc. 53:457-481; Greenwood M (1926); limits
 * and median as Kalbfleisch JD, Prentice RL (2002), 1.4; Brookmeyer R, Crowley J (1982) Biometrics 38:29-41; from memory.
 */
export function kaplanMeier(followed: readonly Followed[], limitsBy: LimitsBy = 'log-log', confidence = 0.95): KaplanMeier {
  refuseUnlessConfidence(confidence);
  const z = normalQuantile((1 + confidence) / 2);
  let surviving = 1;
  let greenwood = 0;
  const steps: SurvivalStep[] = [];
  for (const { time, atRisk, events, censored } of momentsOf(followed)) {
    if (events === 0 && censored === 0) continue;
    surviving *= 1 - events / atRisk;
    greenwood += events / (atRisk * (atRisk - events));
    // Shares of plants leave dust behind when all have gone.
    if (atRisk - events <= 1e-12 * atRisk) surviving = 0;
    const standardError = surviving === 0 ? 0 : surviving * Math.sqrt(greenwood);
    steps.push({ time, atRisk, events, censored, surviving, standardError, ...limitsOf(surviving, greenwood, z, limitsBy) });
  }
  return { steps, ...medianOf(steps) };
}

function limitsOf(surviving: number, greenwood: number, z: number, by: LimitsBy): { lower: number; upper: number } | undefined {
  if (surviving === 0) return undefined;
  if (surviving === 1) return { lower: 1, upper: 1 };
  const spread = z * Math.sqrt(greenwood);
  if (by === 'plain') return { lower: Math.max(0, surviving * (1 - spread)), upper: Math.min(1, surviving * (1 + spread)) };
  if (by === 'log') return { lower: surviving * Math.exp(-spread), upper: Math.min(1, surviving * Math.exp(spread)) };
  const power = Math.exp(spread / Math.log(surviving));
  return { lower: surviving ** (1 / power), upper: surviving ** power };
}

/** First step at which each curve is at a half or below; half-way to the next where it lies at just a half, as in R. */
function medianOf(steps: readonly SurvivalStep[]): Pick<KaplanMeier, 'median' | 'medianLower' | 'medianUpper'> {
  const reached = (curve: (step: SurvivalStep) => number | undefined): number | undefined => {
    const step = steps.find((one) => (curve(one) ?? 1) <= 0.5 + 1e-12);
    if (!step) return undefined;
    // The step itself, unless the curve lies at just a half there.
    const below = steps.find((one) => (curve(one) ?? 0) < 0.5 - 1e-12) ?? step;
    return (step.time + below.time) / 2;
  };
  // Once nobody is left the share itself is nothing, and so is its lower limit.
  const found = { median: reached(({ surviving }) => surviving), medianLower: reached(({ lower = 0 }) => lower), medianUpper: reached(({ upper }) => upper) };
  return Object.fromEntries(Object.entries(found).filter(([, time]) => time !== undefined));
}
