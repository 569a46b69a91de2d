import { Body, Controller, Get, HttpCode, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { NewFilling, NewPlace, NewPlaceMove, Place, PlaceContent, PlaceInTree, ProgrammePath, ThingPath, WalkingOrder } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { PlaceQueries } from './place.queries.ts';
import { PlaceService } from './place.service.ts';
import { TrayService } from './tray.service.ts';
import { WalkService } from './walk.service.ts';

@Controller('programmes/:programme/places')
export class PlaceController {
  constructor(
    private readonly places: PlaceService,
    private readonly trays: TrayService,
    private readonly walk: WalkService,
    private readonly queries: PlaceQueries,
  ) {}

  /** The whole tree in walking order, sites and plots too, with the plants of each place. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: PlaceInTree.array() })
  tree(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<PlaceInTree[]> {
    return this.queries.tree(caller);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Place })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Place> {
    return this.places.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Place })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewPlace }) place: NewPlace,
    @TheCaller() caller: Caller,
  ): Promise<Place> {
    return this.places.make(caller, place);
  }

  /** The order in which places that lie side by side are walked: all of them, named once. */
  @Put('walk')
  @HttpCode(204)
  @Allow(...DESK)
  async order(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: WalkingOrder }) order: WalkingOrder, @TheCaller() caller: Caller): Promise<void> {
    await this.walk.order(caller, order);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Place })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: PlaceContent }) content: PlaceContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Place> {
    return this.places.change(caller, id, content, seen);
  }

  /** A tray is filled anew. Sending it twice fills it once. */
  @Post(':id/fillings')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Place })
  fill(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: NewFilling }) filling: NewFilling,
    @TheCaller() caller: Caller,
  ): Promise<Place> {
    return this.trays.fill(caller, id, filling);
  }

  /** Carries a tray, or a bench, elsewhere with all it holds. Sending it twice moves it once. */
  @Post(':id/moves')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Place })
  move(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: NewPlaceMove }) move: NewPlaceMove,
    @TheCaller() caller: Caller,
  ): Promise<Place> {
    return this.trays.move(caller, id, move);
  }
}
