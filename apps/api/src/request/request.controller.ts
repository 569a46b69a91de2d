import { Body, Controller, Get, Param, Post, Put, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { NewRequest, PlantRequest, ProgrammePath, RequestContent, RequestInList, RequestPlants, RequestQuery, RequestStateBody, SetAsides, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { RequestService } from './request.service.ts';
import { ReservationService } from './reservation.service.ts';

@Controller('programmes/:programme/requests')
export class RequestController {
  constructor(
    private readonly requests: RequestService,
    private readonly reservations: ReservationService,
  ) {}

  /** Last asked first, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: RequestInList.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: RequestQuery }) query: RequestQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<RequestInList[]> {
    return answerPart(await this.requests.list(caller, query), request, reply);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: PlantRequest })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<PlantRequest> {
    return this.requests.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: PlantRequest })
  make(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: NewRequest }) request: NewRequest, @TheCaller() caller: Caller): Promise<PlantRequest> {
    return this.requests.make(caller, request);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: PlantRequest })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: RequestContent }) content: RequestContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<PlantRequest> {
    return this.requests.change(caller, id, content, seen);
  }

  /** Needs If-Match. A withdrawn request lets go of what was set aside for it. */
  @Put(':id/state')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: PlantRequest })
  changeState(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: RequestStateBody }) { state }: RequestStateBody,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<PlantRequest> {
    return this.requests.changeState(caller, id, state, seen);
  }

  /** The batches that can give plants, in walking order, and what the pick takes of each. */
  @Get(':id/plants')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: RequestPlants })
  plants(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<RequestPlants> {
    return this.reservations.plants(caller, id);
  }

  /** Sets plants aside, all of them at once. Needs If-Match. */
  @Put(':id/reservations')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: PlantRequest })
  setAside(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: SetAsides }) { lines }: SetAsides,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<PlantRequest> {
    return this.reservations.setAside(caller, id, lines, seen);
  }
}
