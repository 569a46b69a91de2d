import { Controller, Get, Param, Query, SerializeOptions } from '@nestjs/common';
import { IncidentQuery, IncidentShown, ProgrammePath, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { IncidentService } from './incident.service.ts';

/** They are written, mended and withdrawn as entries; here is what they come to. */
@Controller('programmes/:programme/incidents')
export class IncidentController {
  constructor(private readonly incidents: IncidentService) {}

  /** What went wrong: in the programme, around a place, or where a batch stood at the time. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: IncidentShown.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: IncidentQuery }) query: IncidentQuery, @TheCaller() caller: Caller): Promise<IncidentShown[]> {
    return this.incidents.list(caller, query);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: IncidentShown })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<IncidentShown> {
    return this.incidents.one(caller, id);
  }
}
