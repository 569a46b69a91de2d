import { Body, Controller, Param, Put, SerializeOptions } from '@nestjs/common';
import { SealedPlace, SealedPlaceTold, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { SealService } from './seal.service.ts';

@Controller('programmes/:programme/donor-trees/:id/sealed-place')
export class SealController {
  constructor(private readonly seals: SealService) {}

  /** The exact place of a tree, sealed on a phone to the key in its pack. Whoever stood there tells it, and cannot read it back. The same sealed place again answers as before. */
  @Put()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: SealedPlaceTold })
  tell(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: SealedPlace }) place: SealedPlace, @TheCaller() caller: Caller): Promise<SealedPlaceTold> {
    return this.seals.tell(caller, id, place);
  }
}
