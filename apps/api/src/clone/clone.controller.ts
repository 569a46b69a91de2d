import { Body, Controller, Get, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { CloneGroup, NewCloneStatement, NewSighting, Sighting, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { CloneService } from './clone.service.ts';

@Controller('programmes/:programme/donor-trees/:id')
export class CloneController {
  constructor(private readonly clones: CloneService) {}

  /** Which trees are stated to be one clone with it, and who said so. */
  @Get('clone')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: CloneGroup })
  group(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<CloneGroup> {
    return this.clones.group(caller, id);
  }

  /** The last statement on a pair of trees holds. Sending it twice writes it once. */
  @Post('clone-statements')
  @HttpCode(200)
  @Allow(...DESK)
  @SerializeOptions({ schema: CloneGroup })
  state(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: NewCloneStatement }) statement: NewCloneStatement, @TheCaller() caller: Caller): Promise<CloneGroup> {
    return this.clones.state(caller, id, statement);
  }

  /** The last one first. */
  @Get('sightings')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Sighting.array() })
  sightings(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Sighting[]> {
    return this.clones.sightings(caller, id);
  }

  /** In what state it was seen; the last sighting by its day holds. Sending it twice writes it once. */
  @Post('sightings')
  @HttpCode(200)
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Sighting.array() })
  see(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: NewSighting }) sighting: NewSighting, @TheCaller() caller: Caller): Promise<Sighting[]> {
    return this.clones.see(caller, id, sighting);
  }
}
