import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { CurveQuery, ProgrammePath, RootingCurves } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { curvesAsCsv } from './time-to-root-csv.ts';
import { TimeToRootService } from './time-to-root.service.ts';

const CSV = 'text/csv; charset=utf-8; header=present';

@Controller('programmes/:programme/readings')
export class TimeToRootController {
  constructor(private readonly timeToRoot: TimeToRootService) {}

  /** How long cuttings take to root: the share with roots, week by week since sticking. */
  @Get('time-to-root')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: RootingCurves })
  curves(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: CurveQuery }) query: CurveQuery, @TheCaller() caller: Caller): Promise<RootingCurves> {
    return this.timeToRoot.curves(caller, query);
  }

  @Get('time-to-root.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="time-to-root.csv"')
  async curvesCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: CurveQuery }) query: CurveQuery, @TheCaller() caller: Caller): Promise<string> {
    return curvesAsCsv(await this.timeToRoot.curves(caller, query));
  }
}
