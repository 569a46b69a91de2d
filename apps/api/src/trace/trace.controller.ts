import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { ProgrammePath, Trace, TraceQuery } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { traceAsCsv } from './trace-csv.ts';
import { TraceService } from './trace.service.ts';

@Controller('programmes/:programme')
export class TraceController {
  constructor(private readonly traces: TraceService) {}

  /** Where plants came from, where they went, what stood beside them, and who has them now. */
  @Get('trace')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Trace })
  trace(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: TraceQuery }) asked: TraceQuery, @TheCaller() caller: Caller): Promise<Trace> {
    return this.traces.trace(caller, asked);
  }

  @Get('trace.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="trace.csv"')
  async traceCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: TraceQuery }) asked: TraceQuery, @TheCaller() caller: Caller): Promise<string> {
    return traceAsCsv(await this.traces.trace(caller, asked));
  }
}
