import { Injectable } from '@nestjs/common';
import type { FunderQuery, FunderReport, LandownerQuery, LandownerReport, LandownerTree } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import { standingOf } from '../entry/standing.queries.ts';
import type { Caller } from '../http/caller.ts';
import { refuseWithoutTheGrant } from '../http/grant.ts';
import { lookedAt, type LookedAt, survivalOf } from './funder-rows.ts';
import { LandownerQueries, subjectOf } from './landowner.queries.ts';
import { isAskedFor, type PlantedBatch, PlantedQueries } from './planted.queries.ts';
import { ReportHeadQueries, told } from './report-head.queries.ts';
import { seasonName, seasonOf } from './season-of.ts';

@Injectable()
export class ReportService {
  constructor(
    private readonly database: Database,
    private readonly heads: ReportHeadQueries,
    private readonly landowners: LandownerQueries,
    private readonly planted: PlantedQueries,
  ) {}

  /** What came from their trees. @throws DomainError `record/unknown`, `report/day-in-future`; `place/grant-needed` for a permission */
  landowner(caller: Caller, asked: LandownerQuery): Promise<LandownerReport> {
    const subject = subjectOf(asked);
    if (subject.kind === 'permission') refuseWithoutTheGrant(caller);
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.heads.head(sql, caller.programmeId, asked.asOf);
      const { name, trees, owed, givenBack } = await this.landowners.report(sql, caller.programmeId, subject, head.asOf);
      return { ...told(head), subject: { kind: subject.kind, name }, trees, sum: sumOf(trees), sites: sitesOf(trees), owed: caller.seesExact ? { plants: owed, givenBack } : null };
    });
  }

  /** Trees planted out and how many live, site by site and season by season. @throws DomainError `report/day-in-future` */
  funder(caller: Caller, asked: FunderQuery): Promise<FunderReport> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.heads.head(sql, caller.programmeId, asked.asOf);
      const all = await this.planted.batches(sql, caller.programmeId, head.asOf);
      const season = ({ plantedOn }: PlantedBatch) => seasonOf(plantedOn, head.seasonStartsIn);
      const meant = all.filter((batch) => isAskedFor(batch, season(batch), asked));
      const standing = await standingOf(sql, caller.programmeId, meant.flatMap(({ looks }) => looks));
      const looked = meant.map((batch) => lookedAt(batch, standing, head.asOf));
      const rows = groupsOf(looked, (batch) => JSON.stringify([batch.site, batch.siteId, season(batch), batch.taxon])).map(([first, batches]) => ({
        site: first.site, season: seasonName(season(first), head.seasonStartsIn), taxon: first.taxon, ...survivalOf(batches),
      }));
      const totals = groupsOf(looked, ({ taxon }) => taxon).map(([{ taxon }, batches]) => ({ taxon, ...survivalOf(batches) }));
      return { ...told(head), rows, totals, choices: choicesOf(all, season, head.seasonStartsIn) };
    });
  }
}

/** In the order of their keys; each group is told with its first one. */
function groupsOf(batches: readonly LookedAt[], keyOf: (batch: LookedAt) => string): [LookedAt, LookedAt[]][] {
  const groups = new Map<string, [LookedAt, LookedAt[]]>();
  for (const batch of batches) {
    const group = groups.get(keyOf(batch)) ?? [batch, []];
    group[1].push(batch);
    groups.set(keyOf(batch), group);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, group]) => group);
}

function choicesOf(all: readonly PlantedBatch[], season: (batch: PlantedBatch) => number, startsIn: number): FunderReport['choices'] {
  const named = (pairs: readonly (readonly [string, string])[]) => [...new Map(pairs)].filter(([id]) => id !== '').map(([id, name]) => ({ id, name })).sort((a, b) => (a.name < b.name ? -1 : 1));
  const years = [...new Set(all.map(season))].sort((a, b) => b - a);
  return {
    sites: named(all.map(({ siteId, site }) => [siteId, site])), taxa: named(all.map(({ taxonId, taxon }) => [taxonId, taxon])),
    seasons: years.map((year) => ({ year, name: seasonName(year, startsIn) })),
  };
}

const COUNTS = ['taken', 'stuck', 'received', 'found', 'rooted', 'potted', 'planted', 'lost', 'givenOut', 'mixedAway', 'alive'] as const;
const STAGES = ['cutting', 'liner', 'potted', 'planted'] as const;

function sumOf(trees: readonly LandownerTree[]): LandownerReport['sum'] {
  const of = (n: (tree: LandownerTree) => number) => trees.reduce((sum, tree) => sum + n(tree), 0);
  const counts = Object.fromEntries(COUNTS.map((name) => [name, of((tree) => tree[name])])) as Record<(typeof COUNTS)[number], number>;
  const aliveBy = Object.fromEntries(STAGES.map((stage) => [stage, of((tree) => tree.aliveBy[stage])])) as LandownerReport['sum']['aliveBy'];
  return { ...counts, aliveBy };
}

function sitesOf(trees: readonly LandownerTree[]): LandownerReport['sites'] {
  const sites = new Map<string, { name: string; planted: number; alive: number }>();
  for (const { name, planted, alive } of trees.flatMap((tree) => tree.sites)) {
    const site = sites.get(name) ?? { name, planted: 0, alive: 0 };
    sites.set(name, { name, planted: site.planted + planted, alive: site.alive + alive });
  }
  return [...sites.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}
