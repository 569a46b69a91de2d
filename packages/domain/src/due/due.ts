/** What may be due: walking a place, looks at cuttings, at potted plants, at planted trees. */
export type DueKind = 'round' | 'firstCheck' | 'verdict' | 'movingOn' | 'gradeCheck' | 'siteCheck';

/** Something to be done, and from which day on. Days are calendar days such as 2026-11-25. */
export interface Due {
  readonly kind: DueKind;
  readonly dueOn: string;
}
