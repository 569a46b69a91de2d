import type { RootingGround, WaitingTray } from '@sprigline/contract';
import { type CuttingsOf, dayAfter, DEFAULT_DAYS, leaveOrCall, rootingHistory, rootingPrior, speciesRow, watchedByWeek } from '@sprigline/domain';
import type { TrayRow } from './waiting-tray.queries.ts';

/** What is known of a species: its own cuttings, and what is held beside them. */
export interface Known {
  readonly ground: RootingGround;
  /** Own cuttings that were watched after so many weeks. */
  readonly watchedAfter: (week: number) => number;
  readonly history: ReturnType<typeof rootingHistory>;
}

/** Fewer own cuttings with roots say nothing of the first day on which roots may be seen. */
const ROOTED_NEEDED = 10;
/** Below so many that were watched as long, own cuttings and the prior's together, nothing is said. */
const WATCHED_NEEDED = 5;
const WEEK = 7;

const plantsIn = (rows: readonly CuttingsOf[]): number => rows.reduce((sum, { plants }) => sum + plants, 0);

export function knownOf({ taxonId, taxon, commonName }: Pick<TrayRow, 'taxonId' | 'taxon' | 'commonName'>, own: readonly CuttingsOf[], donors: number): Known {
  const row = speciesRow(taxon);
  const { mean, plants, basis, source } = rootingPrior(row);
  const prior = { mean, plants, basis, source, firstRootsDays: row?.firstRootsDays ?? DEFAULT_DAYS.firstCheck };
  const rooted = own.filter(({ end }) => end === 'rooted');
  const isOwn = plantsIn(rooted) >= ROOTED_NEEDED;
  const firstRoots = isOwn ? { days: Math.min(...rooted.map(({ by }) => by)), basis: 'own' as const } : { days: prior.firstRootsDays, basis: 'prior' as const };
  const ground = { taxonId, taxon, commonName, cuttings: plantsIn(own), rooted: plantsIn(rooted), donors, prior, firstRoots };
  return { ground, watchedAfter: watchedByWeek(own), history: rootingHistory(own, prior) };
}

/** What waiting would bring a tray. Nobody is told to call one: that is a verdict, and people give it. */
export function trayTold(tray: TrayRow, { ground, watchedAfter, history }: Known, verdictDays: number, asOf: string): WaitingTray {
  const { batchId, label, place, donorTree, taxonId, stuckOn, days, green } = tray;
  const handsOff = dayAfter(stuckOn, ground.firstRoots.days);
  const watched = watchedAfter(Math.floor(days / WEEK));
  const head = { batchId, label, place, donorTree, taxonId, stuckOn, days, green, verdictOn: dayAfter(stuckOn, verdictDays), watchedAsLong: watched, handsOffUntil: handsOff > asOf ? handsOff : null };
  const priorWatched = ground.prior.plants * (history.findLast(({ time }) => time <= days)?.shares[0] ?? 1);
  const last = history.at(-1)?.time ?? 0;
  if (days >= last || watched + (days < DEFAULT_DAYS.verdict ? priorWatched : 0) < WATCHED_NEEDED) {
    return { ...head, state: 'beyond-history', chance: null, nextMonth: null, inAll: null, months: null, perMonth: null };
  }
  const { chance, byMonth } = leaveOrCall(green, days, history);
  const months = byMonth.length;
  const inAll = green * chance;
  return { ...head, state: watched < ground.prior.plants ? 'mostly-prior' : 'told', chance, nextMonth: byMonth[0]?.expected ?? 0, inAll, months, perMonth: months > 0 ? inAll / months : 0 };
}

/** What the bench brings in, most a month first; those without figures last, the longest waiting first. */
export const byWhatTheyBring = (a: WaitingTray, b: WaitingTray): number =>
  (b.perMonth ?? -1) - (a.perMonth ?? -1) || a.stuckOn.localeCompare(b.stuckOn) || a.batchId.localeCompare(b.batchId);
