import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { Comparison, ComparisonQuery, ProgrammePath, TrialLayout, TrialQuery } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { comparisonAsCsv, layoutAsCsv } from './comparison-csv.ts';
import { ComparisonService } from './comparison.service.ts';

const CSV = 'text/csv; charset=utf-8; header=present';

@Controller('programmes/:programme/readings')
export class ComparisonController {
  constructor(private readonly comparisons: ComparisonService) {}

  /** Groups of cuttings side by side: what became of them, whether their difference can be told, and what they are mixed up with. */
  @Get('comparison')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Comparison })
  comparison(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ComparisonQuery }) query: ComparisonQuery, @TheCaller() caller: Caller): Promise<Comparison> {
    return this.comparisons.comparison(caller, query);
  }

  @Get('comparison.csv')
  @Allow(...MEMBERS, 'partner')
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="comparison.csv"')
  async comparisonCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ComparisonQuery }) query: ComparisonQuery, @TheCaller() caller: Caller): Promise<string> {
    return comparisonAsCsv(await this.comparisons.comparison(caller, query));
  }

  /** How to lay out next year's trial of two of the groups: each donor tree stuck both ways, and how many cuttings it takes. */
  @Get('comparison/layout')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: TrialLayout })
  layout(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: TrialQuery }) query: TrialQuery, @TheCaller() caller: Caller): Promise<TrialLayout> {
    return this.comparisons.layout(caller, query);
  }

  @Get('comparison/layout.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="trial.csv"')
  async layoutCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: TrialQuery }) query: TrialQuery, @TheCaller() caller: Caller): Promise<string> {
    return layoutAsCsv(await this.comparisons.layout(caller, query));
  }
}
