import { Body, Controller, Get, Param, Post, Put, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { BundleContent, BundlePath, LastCut, LastCutQuery, NewBundle, NewTrip, ProgrammePath, ThingPath, Trip, TripContent, TripInList, TripQuery } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { TripService } from './trip.service.ts';

@Controller('programmes/:programme/trips')
export class TripController {
  constructor(private readonly trips: TripService) {}

  /** Newest first, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: TripInList.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: TripQuery }) query: TripQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<TripInList[]> {
    return answerPart(await this.trips.list(caller, query), request, reply);
  }

  /** Donor trees of a stand that were cut within two years before a day: better left alone. */
  @Get('last-cuts')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LastCut.array() })
  lastCuts(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: LastCutQuery }) query: LastCutQuery, @TheCaller() caller: Caller): Promise<LastCut[]> {
    return this.trips.lastCuts(caller, query);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Trip })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Trip> {
    return this.trips.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Trip })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewTrip }) trip: NewTrip,
    @TheCaller() caller: Caller,
  ): Promise<Trip> {
    return this.trips.make(caller, trip);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Trip })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: TripContent }) content: TripContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Trip> {
    return this.trips.change(caller, id, content, seen);
  }

  /** One more bundle. Sending it twice makes it once. */
  @Post(':id/bundles')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Trip })
  addBundle(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: NewBundle }) bundle: NewBundle,
    @TheCaller() caller: Caller,
  ): Promise<Trip> {
    return this.trips.addBundle(caller, id, bundle);
  }

  /** Needs If-Match with the ETag of the trip. */
  @Put(':id/bundles/:bundleId')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Trip })
  changeBundle(
    @Param({ schema: BundlePath }) path: BundlePath,
    @Body({ schema: BundleContent }) content: BundleContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Trip> {
    return this.trips.changeBundle(caller, path, content, seen);
  }
}
