import { Injectable } from '@nestjs/common';
import type { Diversity, DonorsAtRisk, FunnelQuery, Funnels, FunnelStage, ReadingChoices, ReadingFilter } from '@sprigline/contract';
import { diversityOfStand, donorsAtRisk, survivalFunnel, type DonorSpread, type FunnelStage as Worked } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { DiversityQueries, type HoldingRow } from './diversity.queries.ts';
import { FunnelQueries } from './funnel.queries.ts';

/** The programme's own lines would stand in its settings; until they do, these are used and printed. */
const LIMITS = { fewRooted: 5, fallenBy: 0.5 };

type Labels = ReadonlyMap<string, string>;

@Injectable()
export class ReadingService {
  constructor(
    private readonly database: Database,
    private readonly funnelQueries: FunnelQueries,
    private readonly diversityQueries: DiversityQueries,
  ) {}

  /** The paired funnel of each group of the chosen stickings. */
  async funnels(caller: Caller, query: FunnelQuery): Promise<Funnels> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.funnelQueries.head(sql, caller.programmeId);
      const groups = (await this.funnelQueries.tallies(sql, caller.programmeId, query)).map(({ key, name, tallies }) => ({ key, name, stages: survivalFunnel(tallies) }));
      const labels = await this.funnelQueries.labels(sql, groups.flatMap(({ stages }) => stages.flatMap(({ byDonor }) => namedDonors(byDonor))));
      return { ...head, groups: groups.map((group) => ({ ...group, stages: group.stages.map((stage) => withLabels(stage, labels)) })) };
    });
  }

  /** Diversity at each stage, one stand and taxon at a time. */
  async diversity(caller: Caller, filter: ReadingFilter): Promise<Diversity> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.funnelQueries.head(sql, caller.programmeId);
      const stands = (await this.diversityQueries.stands(sql, caller.programmeId, filter)).map(({ plants, ...stand }) => ({ ...stand, stages: diversityOfStand(plants) }));
      const labels = await this.funnelQueries.labels(sql, stands.flatMap(({ stages }) => stages.flatMap(({ largest }) => (largest ? [largest.donorId] : []))));
      return {
        ...head,
        stands: stands.map((stand) => ({
          standId: stand.stand_id, stand: stand.stand, taxonId: stand.taxon_id, taxon: stand.taxon,
          donorTrees: stand.donor_trees, assumedDistinct: stand.assumed_distinct,
          stages: stand.stages.map(({ largest, ...stage }) => ({ ...stage, ...(largest && { largest: { ...largest, label: labels.get(largest.donorId) ?? '' } }) })),
        })),
      };
    });
  }

  /** Donors that may be lost soon, the most pressing first. */
  async atRisk(caller: Caller, filter: ReadingFilter): Promise<DonorsAtRisk> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.funnelQueries.head(sql, caller.programmeId);
      const holdings = await this.diversityQueries.holdings(sql, caller.programmeId, filter);
      const told = holdings.filter((row): row is HoldingRow & { rootedNow: number } => row.rootedNow !== null);
      const byId = new Map(told.map((row) => [row.donorId, row]));
      const donors = donorsAtRisk(told.map(({ rootedEver, ...row }) => ({ ...row, rootedEarlier: [rootedEver] })), LIMITS);
      return {
        ...head,
        fewRooted: LIMITS.fewRooted,
        notTold: holdings.length - told.length,
        donors: donors.flatMap(({ donorId, risks }) => {
          const row = byId.get(donorId);
          return row ? [{ ...row, risks: [...risks] }] : [];
        }),
      };
    });
  }

  async choices(caller: Caller): Promise<ReadingChoices> {
    return this.database.inTransaction(caller, (sql) => this.diversityQueries.choices(sql, caller.programmeId));
  }
}

const namedDonors = (spread: DonorSpread | undefined): string[] =>
  spread?.kind === 'best-and-worst' ? [spread.best.donorId, spread.worst.donorId] : [];

function withLabels({ byDonor, ...stage }: Worked, labels: Labels): FunnelStage {
  const named = { ...stage, died: { ...stage.died } };
  if (!byDonor) return named;
  if (byDonor.kind === 'interval') return { ...named, byDonor };
  const label = <R extends { readonly donorId: string }>(rate: R) => ({ ...rate, label: labels.get(rate.donorId) ?? '' });
  return { ...named, byDonor: { ...byDonor, best: label(byDonor.best), worst: label(byDonor.worst) } };
}
