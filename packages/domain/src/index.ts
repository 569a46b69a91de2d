// Refusals
export { DomainError } from './errors.ts';

// Ledger
export * from './ledger/books.ts';
export { contentOrder } from './ledger/content-order.ts';
export { deskVerdict, type DeskVerdict, type Discrepancy } from './ledger/desk-verdict.ts';
export { effectiveEntries, type EffectiveEntries } from './ledger/effective-entries.ts';
export * from './ledger/entry.ts';
export { replay } from './ledger/replay.ts';
export { sortingActs, sortingSum, type Sorting, type SortingAct, type SortingSum } from './ledger/sort-tray.ts';
export { refuseStageGoneBack } from './ledger/stage.ts';
export { sumTally, type StagedBooks, type Whose } from './ledger/sum-tally.ts';
export { isOpening, touchedBatches } from './ledger/touched-batches.ts';

// Survival
export { donorRatioInterval, DONORS_NEEDED, type DonorOutcome, type DonorRatioInterval } from './survival/donor-ratio-interval.ts';
export { donorSpread, type DonorRate, type DonorSpread } from './survival/donor-spread.ts';
export type { Interval } from './survival/interval.ts';
export { plantedSurvival, type PlantedSurvival, type PlantedTrees } from './survival/planted-survival.ts';
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
export { cloneGroups, type ClonePair } from './diversity/clone-groups.ts';
export { donorsForCapture, type DonorsForCapture } from './diversity/donors-for-capture.ts';
export { effectiveDonors, type EffectiveDonors } from './diversity/effective-donors.ts';
export { hillNumber } from './diversity/hill-number.ts';
export { largestShare } from './diversity/largest-share.ts';
export type { MixedBatch } from './diversity/mixed-batch.ts';
export { mixedBounds, type MixedBounds } from './diversity/mixed-bounds.ts';
export { rarefiedDonors } from './diversity/rarefied-donors.ts';
export { singlePlaceDonors, type PlantsInPlace } from './diversity/single-place-donors.ts';

// What is due
export { cuttingsDue, type CuttingsNow } from './due/cuttings-due.ts';
export { dayAfter } from './due/day-after.ts';
export { dayNumber, dayOfNumber } from './ledger/calendar-day.ts';
export type { Due, DueKind } from './due/due.ts';
export { gradeCheckDue, roundDue } from './due/look-due.ts';
export { putOffOf, showsOn, type PutOff } from './due/put-off.ts';
export { siteCheckDue, type SiteCheckDue, type SiteCheckName } from './due/site-check-due.ts';
export { DEFAULT_DAYS, STICKINGS_NEEDED, waitingDays, type DaysOf, type RootingHistory, type WaitingDay } from './due/waiting-days.ts';

// Log sheets
export { checkSheet, type KnownToProgramme } from './sheet/check-sheet.ts';
export { dayOfCell, possibleDayOrders } from './sheet/day-of-cell.ts';
export { guessActs, guessColumns } from './sheet/guess-plan.ts';
export { nearSpellings, type SpellingGroup } from './sheet/near-spellings.ts';
export { placePath, type PlaceKind } from './sheet/place-path.ts';
export { plainSpelling, tidySpelling } from './sheet/plain-spelling.ts';
export { labelOf, readRow } from './sheet/read-row.ts';
export { labelRun, positionRun, tagPlants, type Tagged } from './sheet/runs.ts';
export { contentOf, sheetChanges, type EarlierRow, type SheetChanges } from './sheet/sheet-changes.ts';
export * from './sheet/sheet.ts';

// Requests
export { evenShares, type EvenShares } from './request/even-shares.ts';
export { pickPlants, type Pick, type Supply, type Wish } from './request/pick-plants.ts';

// Places
export { exposure, regimeOn, type DatedRegime, type Exposed } from './place/exposure.ts';
export { cellHalfDiagonalM, generalisedPosition, type Cell } from './place/generalised-position.ts';
export { incidentSpan, overlaps, type FoundPlace, type IncidentSpan, type ToldIncident } from './place/incident-spans.ts';
export { entryAllowedFrom, isBefore, type Moment } from './place/re-entry.ts';
export { strictestSensitivity } from './place/strictest-sensitivity.ts';
export { INCIDENT_OF_TAP, isBad, isGood, TAPS, tapOfIncident, tapsToAsk, type Conditions, type Kept, type Tap, type TapAnswer } from './place/taps.ts';
export { celsiusOf } from './place/temperature.ts';
export { whereabouts, type PlaceInHistory, type StayAt, type Whereabouts } from './place/whereabouts.ts';

// Work lists
export { askedOnList, type AskedOnLine } from './work-list/asked-on-list.ts';
export { belongsOnList, stagesOf, WORK_LIST_KINDS, type BatchAtHand, type WorkListKind, type WorkListLimits } from './work-list/belongs-on-list.ts';

// Labels
export { checkCharacter } from './label/check-character.ts';
export { isLabelCode, keptLabel, LABEL_ALPHABET, LABEL_CODE_LENGTH, looksLikeLabelCode, readLabelCode, refuseMistypedLabel, shownLabelCode } from './label/label-code.ts';
export { labelCodes } from './label/label-codes.ts';
export { type Foliage, type LostPlant, rankCandidates, type Sign as LostLabelSign } from './lost-label/rank-candidates.ts';

// Shares
export { clopperPearsonInterval } from './proportion/clopper-pearson-interval.ts';
export { midPInterval } from './proportion/mid-p-interval.ts';
export { newcombeDifference, type ShareDifference, type ShareSeen } from './proportion/newcombe-difference.ts';
export { sampleSize } from './proportion/sample-size.ts';

// Distributions
export { betaBinomial, chanceOfNone } from './distribution/beta-binomial.ts';
export { betaQuantile } from './distribution/beta-quantile.ts';
export { betaShare } from './distribution/beta-share.ts';
export { logBinomialMass } from './distribution/binomial-mass.ts';
export { chiSquareTail } from './distribution/chi-square-tail.ts';
export { gammaTail } from './distribution/gamma-tail.ts';
export { normalQuantile, normalTail } from './distribution/normal.ts';
export { studentTTail } from './distribution/student-t-tail.ts';

// Curves over time
export type { CuttingBatch, CuttingEnd, CuttingMovement, FollowedCuttings, RootsToldOn } from './time/cutting-history.ts';
export { followedCuttings } from './time/followed-cuttings.ts';
export { stageStays, type OnItsWay, type StageBatch, type StageStay } from './time/stage-stays.ts';
export { rootingCurve, type RootingCurve, type RootingStep, type WeekWithLimits } from './time/rooting-curve.ts';
export { occupancyOf, rootingTimes, watchedByWeek, type CurveMethod, type CuttingsOf } from './time/rooting-shares.ts';
export { twoEnds, type EndRegion, type TwoEnded, type TwoEnds } from './time/two-ends.ts';
export type { Followed } from './time/followed.ts';
export { kaplanMeier, type KaplanMeier, type LimitsBy, type SurvivalStep } from './time/kaplan-meier.ts';
export { logRank, type LogRank, type Stratum } from './time/log-rank.ts';
export { stateOccupancy, type Occupancy, type Stay as StateStay } from './time/state-occupancy.ts';
export { turnbull, type Between, type Turnbull } from './time/turnbull.ts';

// Comparisons
export { commonDifference, type CommonDifference } from './comparison/common-difference.ts';
export { compareArms, type ArmDifference, type ArmRow, type ArmsCompared, type ComparedBy } from './comparison/compare-arms.ts';
export { donorDifference } from './comparison/donor-difference.ts';
export { fisherExact, type FisherExact } from './comparison/fisher-exact.ts';
export { holm } from './comparison/holm.ts';
export { logisticRegression, type LogisticRegression, type LogisticRow } from './comparison/logistic-regression.ts';
export { mantelHaenszel, type MantelHaenszel } from './comparison/mantel-haenszel.ts';
export { overdispersion, type Overdispersion } from './comparison/overdispersion.ts';
export { randomisedBlocks, type TrialBlock } from './comparison/randomised-blocks.ts';
export { trialPower, type TrialDesign, type TrialPower } from './comparison/trial-power.ts';
export { NUISANCES, trialVerdict, type Nuisance, type TrialAdvice, type TrialRow, type TrialVerdict } from './comparison/trial-verdict.ts';
export type { TwoByTwo } from './comparison/two-by-two.ts';

// Relatives, and what is not seen
export { chao1, type Chao1 } from './diversity/chao1.ts';
export { donorsPlanted, type DonorStock } from './diversity/donors-planted.ts';
export { heterozygosityKept } from './diversity/heterozygosity-kept.ts';
export { COANCESTRY, statusNumber, type StatusNumber } from './diversity/status-number.ts';

// Plans
export type { VaryingChance } from './distribution/beta-binomial.ts';
export { afterLaterStages } from './planning/after-later-stages.ts';
export { expectedOfLines, type ExpectedNumber, type ExpectedOfLines } from './planning/expected-of-lines.ts';
export { calibrationOf, forecast, type ForecastAt, type StandingLot } from './planning/forecast.ts';
export { leaveOrCall, type LeaveOrCall } from './planning/leave-or-call.ts';
export { moreDonorsOrCuttings, type MoreDonorsOrCuttings } from './planning/more-donors-or-cuttings.ts';
export { planForTarget, type PlanForTarget } from './planning/plan-for-target.ts';
export { propagulesNeeded, type Rounding } from './planning/propagules-needed.ts';
export { pastForecasts, type PastForecast } from './planning/past-forecasts.ts';
export { stockForecast } from './planning/stock-forecast.ts';
export type { DatedStay } from './planning/stock-spread.ts';
export { rootingHistory, type TimedPrior } from './planning/rooting-history.ts';
export { planOf, stickingPlan, type StickingPlan, type StickingTarget } from './planning/sticking-plan.ts';
export { fitVaryingChance, type FittedChance, type Prior } from './planning/varying-chance-fit.ts';

// A second opinion at sticking
export { ABOUT, type About, type Basis, type Opinion, type OwnShare } from './second-opinion/opinion.ts';
export { honestVerdictDays, SLOW_DAYS } from './second-opinion/first-check.ts';
export { ingredientsOf } from './second-opinion/medium.ts';
export type { PastSticking, SecondOpinionQuestion, StickingLine, Wood } from './second-opinion/question.ts';
export { rootingChance, type RootingChance } from './second-opinion/rooting-chance.ts';
export { rootingPrior, speciesRow, type RootingPrior, type SpeciesRow } from './second-opinion/species-row.ts';
export { secondOpinion } from './second-opinion/second-opinion.ts';

// Layouts, and dice that fall the same way again
export { diceOf, type Dice } from './random/dice.ts';
export { cardDeal, type CardDeal } from './layout/card-deal.ts';
export { evenCounts } from './layout/even-counts.ts';
export { plantingLayout, type PlantingLayout } from './layout/planting-layout.ts';
export { gridOf, type Position } from './layout/position.ts';

// At the bench
export * from './bench/bench-arithmetic.ts';
