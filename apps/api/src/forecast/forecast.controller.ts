import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { Forecast, ProgrammePath, ReadingFilter } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { forecastAsCsv } from './forecast-csv.ts';
import { ForecastService } from './forecast.service.ts';

@Controller('programmes/:programme/readings')
export class ForecastController {
  constructor(private readonly forecasts: ForecastService) {}

  /** Plants in pots, or planted out of them, month by month: of those here today, with limits of 80 %, and how past forecasts did. */
  @Get('forecast')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Forecast })
  forecast(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<Forecast> {
    return this.forecasts.forecast(caller, filter);
  }

  @Get('forecast.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="forecast.csv"')
  async forecastCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    return forecastAsCsv(await this.forecasts.forecast(caller, filter));
  }
}
