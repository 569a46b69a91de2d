import { Injectable } from '@nestjs/common';
import type { Comparison, ComparisonQuery, TrialLayout, TrialQuery } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { DueDaysQueries } from '../due/due-days.queries.ts';
import type { Caller } from '../http/caller.ts';
import { HeadQueries } from '../reading/head.queries.ts';
import { askedOf } from './arms.ts';
import { ComparisonQueries } from './comparison.queries.ts';
import { donorsNamedIn, groupsOf, groupTold, speciesWaiting, type WorkedGroup } from './groups-of-rows.ts';
import { pairsOf } from './pairs-of-groups.ts';
import { layoutOf, MOST_TREES } from './trial-layout.ts';

@Injectable()
export class ComparisonService {
  constructor(
    private readonly database: Database,
    private readonly headQueries: HeadQueries,
    private readonly comparisonQueries: ComparisonQueries,
    private readonly dueDays: DueDaysQueries,
  ) {}

  /** What became of the cuttings of each group, and each group beside the one that they are compared with. */
  async comparison(caller: Caller, query: ComparisonQuery): Promise<Comparison> {
    return this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const rows = await this.comparisonQueries.rows(sql, caller.programmeId, query);
      const groups = groupsOf(rows);
      const verdictDays = await this.dueDays.verdicts(sql, caller.programmeId, speciesWaiting(groups));
      const names = await this.headQueries.donors(sql, caller.programmeId, donorsNamedIn(groups));
      const told = groups.filter(({ key }) => key !== '');
      const against = told.find(({ key }) => key === query.against) ?? told[0];
      return {
        ...head, by: query.by, allowFor: query.allowFor ?? null,
        secondTries: rows.filter(({ isSecondTry }) => isSecondTry).reduce((sum, { cuttings }) => sum + cuttings, 0),
        groups: groups.map((group) => groupTold(group, names, verdictDays)),
        against: against?.key ?? null,
        pairs: pairsOf(groups, against, askedOf(query.by, query.allowFor)),
      };
    });
  }

  /** How two groups are told apart next year; one that nobody has tried yet may be among them. */
  async layout(caller: Caller, { first, second, seed, ...query }: TrialQuery): Promise<TrialLayout> {
    if (first === second) throw new DomainError('comparison/nothing-to-compare', 'a trial needs two groups that differ');
    return this.database.inTransaction(caller, async (sql) => {
      const groups = groupsOf(await this.comparisonQueries.rows(sql, caller.programmeId, query));
      const { by: _, ...filter } = query;
      const trees = await this.comparisonQueries.treesFor(sql, caller.programmeId, filter, MOST_TREES);
      const of = (key: string): Pick<WorkedGroup, 'key' | 'rows'> => groups.find((group) => group.key === key) ?? { key, rows: [] };
      return { first: named(of(first)), second: named(of(second)), ...layoutOf([of(first), of(second)], trees, seed) };
    });
  }
}

const named = ({ key, rows }: Pick<WorkedGroup, 'key' | 'rows'>): TrialLayout['first'] => ({ key, name: rows[0]?.name ?? '', hormone: rows[0]?.hormone ?? null });
