/** Something in the database that must not be. */
export interface Finding {
  /** Stable name of the rule that does not hold. */
  readonly rule: FindingRule;
  /** Id of the programme; nothing where a rule of the whole database is broken. */
  readonly programmeId?: string | undefined;
  /** What is wrong with which row, in one sentence. */
  readonly sentence: string;
}

export type FindingRule =
  | 'row-is-missing'
  | 'row-of-another-programme'
  | 'check-is-broken'
  | 'guard-is-off'
  | 'line-is-no-tree'
  | 'parent-is-not-what-the-entry-says'
  | 'entry-is-not-filed'
  | 'books-differ-from-entries'
  | 'books-do-not-add-up'
  | 'picture-is-damaged';
