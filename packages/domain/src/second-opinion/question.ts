import type { AgeClass } from './donor-age.ts';
import type { SpeciesRow } from './species-row.ts';

export type Wood = 'softwood' | 'semiHardwood' | 'hardwood';

/** Some cuttings of one donor tree that were, or will be, treated alike. What nobody told is left out. */
export interface StickingLine {
  /** Clone group: trees that are one clone are one donor. */
  readonly donorId: string;
  readonly donorLabel: string;
  readonly ageYears?: number | undefined;
  readonly ageClass?: AgeClass | undefined;
  /** Whole number. */
  readonly cuttings: number;
  readonly lengthCm?: number | undefined;
  readonly wood?: Wood | undefined;
  readonly medium?: string | undefined;
  /** 0: none was used. */
  readonly hormonePpm?: number | undefined;
  readonly hormoneForm?: string | undefined;
  /** Two recipes make a comparison. */
  readonly recipeId?: string | undefined;
  readonly trayId?: string | undefined;
  readonly benchId?: string | undefined;
  readonly houseId?: string | undefined;
  /** Hours of lamps a day. */
  readonly lightHours?: number | undefined;
  /** Cuttings whose bark was torn off all around, when they were stripped or otherwise. */
  readonly strippedAround?: number | undefined;
}

/** A sticking of the same species that was closed, or is nearly: one row each, the newest will do. */
export interface PastSticking {
  readonly donorId: string;
  readonly goneOn: number;
  readonly settled: number;
  readonly lengthCm?: number | undefined;
  readonly medium?: string | undefined;
  readonly hormonePpm?: number | undefined;
  readonly ageYears?: number | undefined;
}

export interface DaysPlanned {
  readonly days: number;
  readonly basis: 'written' | 'history' | 'default';
}

/** A sticking night, or a plan of one: all lines are of one species and one stand. */
export interface SecondOpinionQuestion {
  readonly lines: readonly StickingLine[];
  readonly species: SpeciesRow | undefined;
  /** When it was, or will be, done; lines of several days are asked about one by one. */
  readonly day: string;
  readonly past: readonly PastSticking[];
  readonly firstCheck: DaysPlanned;
  readonly verdict: DaysPlanned;
  /** Days until roots were first seen in the programme's own stickings, the earliest of them; left out where there are few. */
  readonly ownFirstRootsDays?: number | undefined;
  /** Donor trees that a plan wants of this stand, and how many others of it have living plants already. */
  readonly donorsWanted?: number | undefined;
  readonly donorsAlready: number;
  /** Donor trees, by id, that have living plants in some other house. */
  readonly donorsElsewhere: readonly string[];
  /** Into how many places the cuttings of each tree will go, where trays are not chosen yet. */
  readonly placesPerDonor?: number | undefined;
}
