import { Injectable } from '@nestjs/common';
import type { Diversity, DonorHoldings, DonorsAtRisk, FunnelQuery, Funnels, FunnelStage, ReadingChoices, ReadingFilter } from '@sprigline/contract';
import { dayAfter, diversityOfStand, donorsAtRisk, type DonorSpread, type FunnelStage as Worked } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { DueDaysQueries } from '../due/due-days.queries.ts';
import type { Caller } from '../http/caller.ts';
import { DiversityQueries } from './diversity.queries.ts';
import { funnelOfGroup } from './funnel-of-group.ts';
import { FunnelQueries, type GroupRow } from './funnel.queries.ts';
import { HeadQueries, type NamedDonor, type NamedDonors } from './head.queries.ts';
import { HoldingQueries, type HoldingRow } from './holding.queries.ts';

/** The programme's own lines would stand in its settings; until they do, these are used and printed. */
const LIMITS = { fewRooted: 5, fallenBy: 0.5 };

@Injectable()
export class ReadingService {
  constructor(
    private readonly database: Database,
    private readonly headQueries: HeadQueries,
    private readonly funnelQueries: FunnelQueries,
    private readonly diversityQueries: DiversityQueries,
    private readonly holdingQueries: HoldingQueries,
    private readonly dueDays: DueDaysQueries,
  ) {}

  /** The paired funnel of each group of the chosen stickings. */
  async funnels(caller: Caller, query: FunnelQuery): Promise<Funnels> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const rows = await this.funnelQueries.tallies(sql, caller.programmeId, query);
      const days = new Map((await this.dueDays.ofTaxa(sql, caller.programmeId)).map(({ taxonId, verdict }) => [taxonId, verdict.days]));
      const groups = rows.map((row) => ({ ...row.head, key: row.key, verdictOn: lastVerdict(row.waiting, days), ...funnelOfGroup(row) }));
      const named = groups.flatMap(({ stages }) => stages.flatMap(({ byDonor }) => namedDonors(byDonor)));
      const donors = await this.headQueries.donors(sql, caller.programmeId, named);
      return { ...head, groups: groups.map((group) => ({ ...group, stages: group.stages.map((stage) => withNames(stage, donors)) })) };
    });
  }

  /** Diversity at each stage, one stand and taxon at a time. */
  async diversity(caller: Caller, filter: ReadingFilter): Promise<Diversity> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const stands = (await this.diversityQueries.stands(sql, caller.programmeId, filter)).map(({ plants, ...stand }) => ({ ...stand, stages: diversityOfStand(plants) }));
      const named = stands.flatMap(({ stages }) => stages.flatMap(({ largest }) => (largest ? [largest.donorId] : [])));
      const donors = await this.headQueries.donors(sql, caller.programmeId, named);
      return {
        ...head,
        stands: stands.map((stand) => ({
          ...stand,
          stages: stand.stages.map(({ largest, perDonor, ...stage }) => ({ ...stage, perDonor: [...perDonor], ...(largest && { largest: nameOf(largest, donors) }) })),
        })),
      };
    });
  }

  /** Every donor, fewest rooted plants first, with what speaks against it. */
  async holdings(caller: Caller, filter: ReadingFilter): Promise<DonorHoldings> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const rows = await this.holdingQueries.holdings(sql, caller.programmeId, filter);
      const risks = new Map(atRisk(rows).map((donor) => [donor.donorId, donor.risks]));
      return { ...head, fewRooted: LIMITS.fewRooted, donors: rows.map((row) => ({ ...row, risks: [...(risks.get(row.donorId) ?? [])] })) };
    });
  }

  /** Donors that may be lost soon, the most pressing first. */
  async atRisk(caller: Caller, filter: ReadingFilter): Promise<DonorsAtRisk> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const rows = await this.holdingQueries.holdings(sql, caller.programmeId, filter);
      const donors = atRisk(rows).map(({ risks, rootedEarlier: _, ...row }) => ({ ...row, risks: [...risks] }));
      return { ...head, fewRooted: LIMITS.fewRooted, notTold: rows.filter(({ rootedNow }) => rootedNow === null).length, donors };
    });
  }

  async choices(caller: Caller): Promise<ReadingChoices> {
    return this.database.inTransaction(caller, (sql) => this.headQueries.choices(sql, caller.programmeId));
  }
}

/** Of those whose rooted plants somebody told: unknown is not none. */
function atRisk(rows: readonly HoldingRow[]) {
  const told = rows.flatMap(({ rootedNow, ...row }) => (rootedNow === null ? [] : [{ ...row, rootedNow, rootedEarlier: [row.rootedEver] }]));
  const byId = new Map(told.map((row) => [row.donorId, row]));
  return donorsAtRisk(told, LIMITS).flatMap(({ donorId, risks }) => {
    const row = byId.get(donorId);
    return row ? [{ ...row, risks }] : [];
  });
}

const namedDonors = (spread: DonorSpread | undefined): string[] =>
  spread?.kind === 'best-and-worst' ? [spread.best.donorId, spread.worst.donorId] : [];

const nameOf = <R extends { readonly donorId: string }>(of: R, donors: NamedDonors): R & NamedDonor =>
  ({ ...of, ...(donors.get(of.donorId) ?? { donorId: of.donorId, treeId: of.donorId, label: '' }) });

function withNames({ byDonor, ...stage }: Worked, donors: NamedDonors): FunnelStage {
  const named = { ...stage, died: { ...stage.died } };
  if (!byDonor) return named;
  if (byDonor.kind === 'interval') return { ...named, byDonor };
  return { ...named, byDonor: { ...byDonor, best: nameOf(byDonor.best, donors), worst: nameOf(byDonor.worst, donors) } };
}

/** The latest day on which cuttings that are undecided now have their verdict. */
function lastVerdict(waiting: GroupRow['waiting'], days: ReadonlyMap<string, number>): string | null {
  return waiting.flatMap(({ taxonId, lastStuckOn }) => dayAfter(lastStuckOn, days.get(taxonId) ?? 0)).sort().at(-1) ?? null;
}
