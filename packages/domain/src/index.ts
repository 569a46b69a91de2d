// Refusals
export { DomainError } from './errors.ts';

// Ledger
export * from './ledger/books.ts';
export * from './ledger/entry.ts';

// Survival
export { donorRatioInterval, DONORS_NEEDED, type DonorOutcome, type DonorRatioInterval } from './survival/donor-ratio-interval.ts';
export { donorSpread, type DonorRate, type DonorSpread } from './survival/donor-spread.ts';
export type { Interval } from './survival/interval.ts';
export { settledRate, type SettledRate, type StageEnds } from './survival/settled-rate.ts';
export type { StageSum } from './survival/stage-sum.ts';
export type { StageTally } from './survival/stage-tally.ts';
export { studentTQuantile } from './survival/student-t-quantile.ts';
export { survivalFunnel, type FunnelStage } from './survival/survival-funnel.ts';
export { wilsonInterval } from './survival/wilson-interval.ts';

// Diversity
export { alleleCapture } from './diversity/allele-capture.ts';
export { diversityOfStand, type StageDiversity, type StandPlants } from './diversity/diversity-of-stand.ts';
export {
  donorsAtRisk,
  type DonorAtRisk,
  type DonorHolding,
  type Risk,
  type RiskLimits,
  type WildTree,
} from './diversity/donors-at-risk.ts';
export { donorsForCapture, type DonorsForCapture } from './diversity/donors-for-capture.ts';
export { effectiveDonors, type EffectiveDonors } from './diversity/effective-donors.ts';
export { hillNumber } from './diversity/hill-number.ts';
export { largestShare } from './diversity/largest-share.ts';
export type { MixedBatch } from './diversity/mixed-batch.ts';
export { mixedBounds, type MixedBounds } from './diversity/mixed-bounds.ts';
export { rarefiedDonors } from './diversity/rarefied-donors.ts';
export { singlePlaceDonors, type PlantsInPlace } from './diversity/single-place-donors.ts';
