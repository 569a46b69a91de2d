import { Body, Controller, Get, Header, HttpCode, Param, Post, Query, SerializeOptions } from '@nestjs/common';
import { Climate, ClimateQuery, ClimateWritten, ProgrammePath, ReadingSetAside, ThingPath, WriteClimate } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { csvOf } from '../http/csv.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { ClimateService } from './climate.service.ts';

@Controller('programmes/:programme')
export class ClimateController {
  constructor(private readonly climate: ClimateService) {}

  /** Readings by hand or of loggers, many at once, answered one by one. */
  @Post('climate')
  @HttpCode(200)
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: ClimateWritten })
  write(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: WriteClimate }) request: WriteClimate, @TheCaller() caller: Caller): Promise<ClimateWritten> {
    return this.climate.write(caller, request);
  }

  /** Day by day, the last 30 days unless told otherwise. */
  @Get('places/:id/climate')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Climate })
  at(@Param({ schema: ThingPath }) { id }: ThingPath, @Query({ schema: ClimateQuery }) query: ClimateQuery, @TheCaller() caller: Caller): Promise<Climate> {
    return this.climate.at(caller, id, query);
  }

  /** Every reading of those days, those set aside with the reason. */
  @Get('places/:id/climate.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="climate.csv"')
  async csv(@Param({ schema: ThingPath }) { id }: ThingPath, @Query({ schema: ClimateQuery }) query: ClimateQuery, @TheCaller() caller: Caller): Promise<string> {
    const readings = await this.climate.every(caller, id, query);
    return csvOf(
      ['taken at (UTC)', 'temperature °C', 'relative humidity %', 'told by', 'set aside because'],
      readings.map(({ takenAt, temperatureC, humidityPercent, toldBy, setAside }) => [takenAt, temperatureC ?? undefined, humidityPercent ?? undefined, toldBy, setAside ?? undefined]),
    );
  }

  /** A wrong reading stays readable, and is counted no more. */
  @Post('climate/:id/setting-aside')
  @HttpCode(204)
  @Allow(...DESK)
  async setAside(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: ReadingSetAside }) { reason }: ReadingSetAside, @TheCaller() caller: Caller): Promise<void> {
    await this.climate.setAside(caller, id, reason);
  }
}
