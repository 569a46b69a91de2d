import { Injectable } from '@nestjs/common';
import type { Diversity, DonorHolding, DonorHoldings, DonorsAtRisk, FunnelGroup, FunnelQuery, Funnels, ReadingChoices, ReadingFilter, ReadingPart } from '@sprigline/contract';
import { dayAfter, diversityOfStand } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { DueDaysQueries } from '../due/due-days.queries.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { DiversityQueries } from './diversity.queries.ts';
import { funnelOfGroup } from './funnel-of-group.ts';
import { FunnelQueries, type GroupRow } from './funnel.queries.ts';
import { HeadQueries } from './head.queries.ts';
import { HoldingQueries } from './holding.queries.ts';
import { namedDonors, nameOf, withNames } from './named-stages.ts';
import { atRisk, LIMITS } from './risk-of-rows.ts';

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
  async funnels(caller: Caller, query: FunnelQuery): Promise<Omit<Funnels, 'groups'> & { readonly part: Part<FunnelGroup> }> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const part = await this.funnelQueries.tallies(sql, caller.programmeId, query);
      const waiting = new Set(part.items.flatMap((row) => row.waiting.map(({ taxonId }) => taxonId)));
      const days = await this.dueDays.verdicts(sql, caller.programmeId, [...waiting]);
      const groups = part.items.map((row) => ({ ...row.head, key: row.key, verdictOn: lastVerdict(row.waiting, days), ...funnelOfGroup(row) }));
      const named = groups.flatMap(({ stages }) => stages.flatMap(({ byDonor }) => namedDonors(byDonor)));
      const donors = await this.headQueries.donors(sql, caller.programmeId, named);
      const items = groups.map((group) => ({ ...group, stages: group.stages.map((stage) => withNames(stage, donors)) }));
      return { ...head, part: { ...part, items } };
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
  async holdings(caller: Caller, { after, limit, ...filter }: Partial<ReadingPart>): Promise<InParts<DonorHoldings>> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const rows = await this.holdingQueries.holdings(sql, caller.programmeId, filter);
      const risks = new Map(atRisk(rows).map((donor) => [donor.donorId, donor.risks]));
      const donors = rows.map((row) => ({ ...row, risks: [...(risks.get(row.donorId) ?? [])] }));
      return { ...head, fewRooted: LIMITS.fewRooted, inAll: donors.length, part: partAfter(donors, after, limit) };
    });
  }

  /** Donors that may be lost soon, the most pressing first. */
  async atRisk(caller: Caller, { after, limit, ...filter }: Partial<ReadingPart>): Promise<InParts<DonorsAtRisk>> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const rows = await this.holdingQueries.holdings(sql, caller.programmeId, filter);
      const donors = atRisk(rows).map(({ risks, rootedEarlier: _, ...row }) => ({ ...row, risks: [...risks] }));
      const notTold = rows.filter(({ rootedNow }) => rootedNow === null).length;
      return { ...head, fewRooted: LIMITS.fewRooted, notTold, inAll: donors.length, part: partAfter(donors, after, limit) };
    });
  }

  async choices(caller: Caller): Promise<ReadingChoices> {
    return this.database.inTransaction(caller, (sql) => this.headQueries.choices(sql, caller.programmeId));
  }
}

/** Some of the donors; without a limit, which only a table for a spreadsheet is, all of them. */
type InParts<Of extends { donors: DonorHolding[] }> = Omit<Of, 'donors'> & { readonly part: Part<DonorHolding> };

/**
 * What comes after a donor in the order of the reading. If that donor is no more in it, the place is found by
 * how far down it stood, so that nothing is shown twice or left out for long.
 */
function partAfter(donors: readonly DonorHolding[], after: string | undefined, limit = Infinity): Part<DonorHolding> {
  const [id, place] = keysAfter(after, 2) ?? [];
  const at = donors.findIndex(({ donorId }) => donorId === id);
  const begin = id === undefined ? 0 : at >= 0 ? at + 1 : Number(place);
  return partOf(donors.slice(begin, begin + limit + 1), limit, ({ donorId }) => [donorId, String(begin + limit)]);
}

/** The latest day on which cuttings that are undecided now have their verdict. */
function lastVerdict(waiting: GroupRow['waiting'], days: ReadonlyMap<string, number>): string | null {
  return waiting.flatMap(({ taxonId, lastStuckOn }) => dayAfter(lastStuckOn, days.get(taxonId) ?? 0)).sort().at(-1) ?? null;
}
