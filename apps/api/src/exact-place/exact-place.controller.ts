import { Body, Controller, Get, Param, Put, SerializeOptions } from '@nestjs/common';
import { ExactPlace, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersionIfAny, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { ExactPlaceService } from './exact-place.service.ts';

/** The only routes that answer places as measured; each needs the grant *see exact places*. */
@Controller('programmes/:programme')
export class ExactPlaceController {
  constructor(private readonly places: ExactPlaceService) {}

  @Get('donor-trees/:id/exact-place')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: ExactPlace })
  ofDonorTree(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<ExactPlace> {
    return this.places.one(caller, { donorTreeId: id });
  }

  /** Needs If-Match where a place is told already. */
  @Put('donor-trees/:id/exact-place')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: ExactPlace })
  tellOfDonorTree(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: ExactPlace }) place: ExactPlace,
    @SeenVersionIfAny() seen: string | undefined,
    @TheCaller() caller: Caller,
  ): Promise<ExactPlace> {
    return this.places.tell(caller, { donorTreeId: id }, place, seen);
  }

  @Get('stands/:id/exact-place')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: ExactPlace })
  ofStand(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<ExactPlace> {
    return this.places.one(caller, { standId: id });
  }

  /** Needs If-Match where a place is told already. */
  @Put('stands/:id/exact-place')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: ExactPlace })
  tellOfStand(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: ExactPlace }) place: ExactPlace,
    @SeenVersionIfAny() seen: string | undefined,
    @TheCaller() caller: Caller,
  ): Promise<ExactPlace> {
    return this.places.tell(caller, { standId: id }, place, seen);
  }
}
