import type { CheckAtSite, DonorAtSite, SiteLine, StandAtSite } from '@sprigline/contract';
import { diversityOfStand, survivalFunnel, type StageTally } from '@sprigline/domain';
import type { Standing } from '../entry/standing.queries.ts';
import type { NamedDonors } from './head.queries.ts';
import type { SiteRow } from './site-reading.queries.ts';

/** More than anybody reads; the table for a spreadsheet has them too. */
export const MOST_DONORS = 300;
const MOST_CHECKS = 200;

/** The books of a row, as rates are made from. Whoever lost the last tree of a donor still sees it here. */
export const tallyOf = ({ donorId, came, died, unaccounted, thrownOut, givenOut, mixed, mixedIn, here, notFound }: SiteRow): StageTally => ({
  stage: 'planted', donorId: donorId ?? undefined, cameIn: came, goneOn: 0, died: { 'of whatever cause': died }, unaccounted, notRooted: 0, thrownOut, givenOut, restuck: 0,
  mixed, mixedIn, here, notFound,
});

/** Row by row of one stand and species: rates of the planted, and whose copies they are. */
export function standsOf(rows: readonly SiteRow[]): (Pick<StandAtSite, 'standId' | 'stand' | 'taxonId' | 'taxon' | 'commonName'> & Worked)[] {
  const keyOf = ({ standId, taxonId }: SiteRow): string => `${standId ?? ''}/${taxonId ?? ''}`;
  return [...new Set(rows.map(keyOf))].flatMap((key) => {
    const of = rows.filter((row) => keyOf(row) === key);
    const [head] = of;
    const planted = survivalFunnel(of.map(tallyOf)).find(({ stage }) => stage === 'planted');
    const diversity = diversityOfStand(of.flatMap(({ donorId, here }) => (donorId === null || here === 0 ? [] : [{ stage: 'planted' as const, donorId, plants: here }])))
      .find(({ stage }) => stage === 'planted');
    if (!head || !planted || !diversity) return [];
    const { standId, stand, taxonId, taxon, commonName } = head;
    return [{ standId, stand, taxonId, taxon, commonName, planted, diversity }];
  });
}

interface Worked {
  readonly planted: ReturnType<typeof survivalFunnel>[number];
  readonly diversity: ReturnType<typeof diversityOfStand>[number];
}

/** The smallest share alive first, then the fewest trees. */
export function donorsOf(rows: readonly SiteRow[]): DonorAtSite[] {
  const share = ({ came, alive }: DonorAtSite): number => (came === 0 ? 1 : alive / came);
  return rows
    .map((row): DonorAtSite => ({
      donor: namedIn(row),
      stand: row.stand, taxon: row.taxon, commonName: row.commonName,
      came: row.came + row.mixedIn - row.mixed, alive: row.here - row.notFound, notFound: row.notFound, died: row.died, unaccounted: row.unaccounted, left: row.thrownOut + row.givenOut,
    }))
    .toSorted((a, b) => share(a) - share(b) || a.came - b.came || (a.donor?.label ?? '').localeCompare(b.donor?.label ?? ''));
}

/** The donors of the rows by id, with what they are called. */
export const namesIn = (rows: readonly SiteRow[]): NamedDonors => new Map(rows.flatMap((row) => namedIn(row) ?? []).map((donor) => [donor.donorId, donor]));

function namedIn({ donorId, treeId, label }: SiteRow): { donorId: string; treeId: string; label: string } | null {
  return donorId === null ? null : { donorId, treeId: treeId ?? donorId, label: label ?? '' };
}

/** A batch, or the plot whose batches were not told apart. */
export const whatWasChecked = ({ said }: Standing): string => (said.kind === 'checked' ? (said.batchId ?? said.placeId ?? '') : '');

/** Checks of a day and plot together, the latest first. */
export function checksOf(entries: readonly Standing[], plots: ReadonlyMap<string, { id: string; name: string }>): CheckAtSite[] {
  const sums = new Map<string, CheckAtSite>();
  for (const entry of entries) {
    const { observedOn, said } = entry;
    const plot = plots.get(whatWasChecked(entry));
    if (said.kind !== 'checked' || !plot) continue;
    const key = `${observedOn} ${plot.id}`;
    const before = sums.get(key) ?? { day: observedOn, plotId: plot.id, plot: plot.name, alive: 0, dead: 0, notFound: 0, notLooked: 0 };
    const dead = said.dead.reduce((sum, { n }) => sum + n, 0);
    sums.set(key, { ...before, alive: before.alive + said.alive, dead: before.dead + dead, notFound: before.notFound + said.notFound, notLooked: before.notLooked + said.notLooked });
  }
  return [...sums.values()].sort((a, b) => (a.day === b.day ? a.plot.localeCompare(b.plot) : a.day < b.day ? 1 : -1)).slice(0, MOST_CHECKS);
}

export function siteLineOf(site: { siteId: string; name: string; lastCheckedOn: string | null }, rows: readonly SiteRow[]): SiteLine {
  const sum = (of: (row: SiteRow) => number): number => rows.reduce((all, row) => all + of(row), 0);
  return {
    ...site,
    came: sum(({ came, mixed, mixedIn }) => came + mixedIn - mixed), alive: sum(({ here, notFound }) => here - notFound), notFound: sum(({ notFound }) => notFound),
    lost: sum(({ died, unaccounted, thrownOut }) => died + unaccounted + thrownOut),
    donors: new Set(rows.flatMap(({ donorId, here }) => (donorId === null || here === 0 ? [] : [donorId]))).size,
  };
}
