import { Injectable } from '@nestjs/common';
import type { IncidentOnAxis, ReadingFilter, ReadingLines, ReadingPart, SiteLines, SiteReading, TimeAxis } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import type { Part } from '../http/part-of-list.ts';
import { incidentsAround } from '../incident/incident.queries.ts';
import { HeadQueries } from './head.queries.ts';
import { HoldingQueries } from './holding.queries.ts';
import { LineQueries } from './line.queries.ts';
import { lineOf, partOfLines, sumsOf } from './lines-of-rows.ts';
import { nameOf, withNames } from './named-stages.ts';
import { atRisk } from './risk-of-rows.ts';
import { checksOf, donorsOf, MOST_DONORS, namesIn, siteLineOf, standsOf, whatWasChecked } from './site-of-rows.ts';
import { SiteReadingQueries, type SiteRow } from './site-reading.queries.ts';
import { timeAxis } from './time-axis.ts';
import { TimeAxisQueries } from './time-axis.queries.ts';

/** So many incidents are marked; older ones are left out. */
const MOST_INCIDENTS = 100;

/** Readings of a programme, a species, a season or a site as a whole. */
@Injectable()
export class DashboardService {
  constructor(
    private readonly database: Database,
    private readonly headQueries: HeadQueries,
    private readonly lineQueries: LineQueries,
    private readonly holdingQueries: HoldingQueries,
    private readonly timeQueries: TimeAxisQueries,
    private readonly siteQueries: SiteReadingQueries,
  ) {}

  /** A line for each stand and species, those that need eyes first. */
  async lines(caller: Caller, { after, limit, ...filter }: ReadingPart): Promise<Omit<ReadingLines, 'lines'> & { part: Part<ReadingLines['lines'][number]> }> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const rows = await this.lineQueries.lines(sql, caller.programmeId, filter);
      const risks = new Map<string, number>();
      for (const { standId, taxon } of atRisk(await this.holdingQueries.holdings(sql, caller.programmeId, filter))) {
        risks.set(`${standId} ${taxon}`, (risks.get(`${standId} ${taxon}`) ?? 0) + 1);
      }
      const lines = rows.map((row) => lineOf(row, risks.get(`${row.standId ?? ''} ${row.taxon}`) ?? 0));
      return { ...head, inAll: sumsOf(lines), part: partOfLines(lines, { after, limit }) };
    });
  }

  /** Plants at each stage over time, with rounds and incidents. */
  async timeAxis(caller: Caller, filter: ReadingFilter): Promise<TimeAxis> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const { changes, looked, troubled } = await this.timeQueries.changes(sql, caller.programmeId, filter, head.asOf);
      return { ...head, ...timeAxis(changes, looked, head.asOf), incidents: await this.#incidents(sql, caller, filter, troubled) };
    });
  }

  async sites(caller: Caller, filter: ReadingFilter): Promise<SiteLines> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const sites = await this.siteQueries.sites(sql, caller.programmeId);
      const rows = await this.siteQueries.books(sql, caller.programmeId, filter);
      return { ...head, sites: sites.map((site) => siteLineOf(site, rows.filter(({ siteId }) => siteId === site.siteId))) };
    });
  }

  /** What was planted at a site and how it fares, by stand, by donor tree and check by check. */
  async site(caller: Caller, siteId: string, filter: ReadingFilter, mostDonors = MOST_DONORS): Promise<SiteReading> {
    return this.database.inTransaction(caller, async (sql) => {
      const { site, ...head } = await this.headQueries.headAtSite(sql, caller.programmeId, siteId);
      if (!site) throw new DomainError('record/unknown', 'no such planting site in this programme');
      const rows = await this.siteQueries.books(sql, caller.programmeId, filter, siteId);
      const checks = await this.siteQueries.checks(sql, caller.programmeId, filter, siteId);
      const plots = await this.siteQueries.plots(sql, caller.programmeId, checks.map(whatWasChecked));
      return {
        ...head, site, stands: namedStands(rows), donors: donorsOf(rows).slice(0, mostDonors), donorsInAll: rows.length, checks: checksOf(checks, plots),
      };
    });
  }

  /** The latest ones first. */
  async #incidents(sql: UnitOfWork, caller: Caller, filter: ReadingFilter, troubled: readonly string[]): Promise<IncidentOnAxis[]> {
    const incidents = troubled.length > 0 ? (await incidentsAround(sql, caller, troubled)).slice(0, MOST_INCIDENTS) : [];
    const there = await this.timeQueries.stoodThere(sql, caller.programmeId, filter, incidents.map(({ entryId: id, placeId, from, until }) => ({ id, placeId, from, until })));
    const found = new Map(there.map((row) => [row.id, row]));
    return incidents.flatMap(({ entryId, placeId, what, severity, from, until }) => {
      const row = found.get(entryId);
      return row ? [{ entryId, placeId, what, severity, from, until, place: row.place, batches: row.batches }] : [];
    });
  }
}

function namedStands(rows: readonly SiteRow[]): SiteReading['stands'] {
  const names = namesIn(rows);
  return standsOf(rows).map(({ planted, diversity: { largest, perDonor, ...diversity }, ...stand }) => ({
    ...stand,
    planted: withNames(planted, names),
    diversity: { ...diversity, perDonor: [...perDonor], ...(largest && { largest: nameOf(largest, names) }) },
  }));
}

