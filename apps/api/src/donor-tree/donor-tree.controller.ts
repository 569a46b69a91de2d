import { Body, Controller, Get, Param, Post, Put, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { DonorTree, DonorTreeContent, DonorTreeQuery, NewDonorTree, ProgrammePath, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { DonorTreeService } from './donor-tree.service.ts';

@Controller('programmes/:programme/donor-trees')
export class DonorTreeController {
  constructor(private readonly trees: DonorTreeService) {}

  /** By label, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: DonorTree.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: DonorTreeQuery }) query: DonorTreeQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<DonorTree[]> {
    return answerPart(await this.trees.list(caller, query), request, reply);
  }

  @Get(':id')
  @Allow(...MEMBERS, 'partner')
  @Tagged()
  @SerializeOptions({ schema: DonorTree })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<DonorTree> {
    return this.trees.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: DonorTree })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewDonorTree }) tree: NewDonorTree,
    @TheCaller() caller: Caller,
  ): Promise<DonorTree> {
    return this.trees.make(caller, tree);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: DonorTree })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: DonorTreeContent }) content: DonorTreeContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<DonorTree> {
    return this.trees.change(caller, id, content, seen);
  }
}
