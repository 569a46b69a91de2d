import { Body, Controller, Get, Param, Post, Put, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { NewPermission, PageQuery, ProgrammePath, Permission, PermissionContent, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { PermissionService } from './permission.service.ts';

@Controller('programmes/:programme/permissions')
export class PermissionController {
  constructor(private readonly permissions: PermissionService) {}

  /** Needs the grant *see exact places*. Last begun first, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Permission.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: PageQuery }) query: PageQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Permission[]> {
    return answerPart(await this.permissions.list(caller, query), request, reply);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Permission })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Permission> {
    return this.permissions.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Permission })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewPermission }) permission: NewPermission,
    @TheCaller() caller: Caller,
  ): Promise<Permission> {
    return this.permissions.make(caller, permission);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Permission })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: PermissionContent }) content: PermissionContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Permission> {
    return this.permissions.change(caller, id, content, seen);
  }
}
