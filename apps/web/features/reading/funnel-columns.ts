import type { FunnelStage } from '@sprigline/contract';

/** What the table twin of a funnel tells of a stage, column by column. */
const COLUMNS = {
  reached: (stage) => stage.reached,
  goneOn: (stage) => stage.goneOn,
  here: (stage) => stage.here,
  died: ({ died }) => Object.values(died).reduce((sum, n) => sum + n, 0),
  unaccounted: (stage) => stage.unaccounted,
  notRooted: (stage) => stage.notRooted,
  thrownOut: (stage) => stage.thrownOut,
  givenOut: (stage) => stage.givenOut,
  restuck: (stage) => stage.restuck,
  mixedAway: (stage) => stage.mixedAway,
  donorsReached: ({ donors }) => donors.reached,
  donorsLeft: ({ donors }) => donors.left,
} as const satisfies Readonly<Record<string, (stage: FunnelStage) => number>>;

/** Left out where they hold nothing: few programmes stick again or mix. */
const SELDOM: ReadonlySet<string> = new Set(['thrownOut', 'givenOut', 'restuck', 'mixedAway']);

type Key = keyof typeof COLUMNS;

export function columnsOf(stages: readonly FunnelStage[]): { key: Key; of: (stage: FunnelStage) => number }[] {
  return (Object.keys(COLUMNS) as Key[])
    .map((key) => ({ key, of: COLUMNS[key] }))
    .filter(({ key, of }) => !SELDOM.has(key) || stages.some((stage) => of(stage) > 0));
}
