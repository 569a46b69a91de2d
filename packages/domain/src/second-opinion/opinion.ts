/** What an opinion rests on. `no-evidence`: nothing speaks, so nothing is called unusual. */
export type Basis = 'species-row' | 'own-history' | 'common-practice' | 'no-evidence';

export const ABOUT = ['length', 'medium', 'hormone', 'light', 'donor-age', 'stripped', 'places', 'donors', 'comparison', 'first-check', 'verdict'] as const;
export type About = (typeof ABOUT)[number];

/** Of own cuttings whose end is known: so many rooted and went on, of so many, of so many donor trees. */
export interface OwnShare {
  readonly goneOn: number;
  readonly settled: number;
  readonly donors: number;
}

/** One thing that was looked at. It warns and never blocks. */
export interface Opinion {
  readonly about: About;
  /** `not-told`: nobody wrote it down, so there is nothing to hold against anything. */
  readonly verdict: 'unusual' | 'usual' | 'no-evidence' | 'not-told';
  readonly basis: Basis;
  /** What of it, such as `above`; the words for people hang on it. */
  readonly says: string;
  /** Labels of the donor trees that it concerns; empty: all alike. */
  readonly donors: readonly string[];
  /** Figures and words that were told or are usual, by name. */
  readonly facts: Readonly<Record<string, number | string>>;
  /** What the programme's own cuttings did that were like this, and those that were not. */
  readonly like?: OwnShare | undefined;
  readonly unlike?: OwnShare | undefined;
}

export const notTold = (about: About): Opinion => ({ about, verdict: 'not-told', basis: 'no-evidence', says: 'not-told', donors: [], facts: {} });

export const noEvidence = (about: About, says: string, facts: Opinion['facts'] = {}): Opinion => ({ about, verdict: 'no-evidence', basis: 'no-evidence', says, donors: [], facts });
