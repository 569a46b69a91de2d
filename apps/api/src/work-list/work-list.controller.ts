import { Body, Controller, Get, Header, HttpCode, Param, Post, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { NewWorkList, ProgrammePath, ThingPath, TypedSheet, TypedSheetAnswer, WorkList, WorkListInList, WorkListQuery } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { TypingService } from './typing.service.ts';
import { workListAsCsv } from './work-list-csv.ts';
import { WorkListService } from './work-list.service.ts';

@Controller('programmes/:programme/work-lists')
export class WorkListController {
  constructor(
    private readonly lists: WorkListService,
    private readonly typing: TypingService,
  ) {}

  /** Sheets that were made, the newest first, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: WorkListInList.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: WorkListQuery }) query: WorkListQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<WorkListInList[]> {
    return answerPart(await this.lists.list(caller, query), request, reply);
  }

  /** Chooses the batches, in walking order, and keeps them as the sheet that is printed. Sending it twice makes it once. */
  @Post()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: WorkList })
  make(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: NewWorkList }) list: NewWorkList, @TheCaller() caller: Caller): Promise<WorkList> {
    return this.lists.make(caller, list);
  }

  /** The lines as they were printed, with the batches as they are now. */
  @Get(':id')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: WorkList })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<WorkList> {
    return this.lists.one(caller, id);
  }

  @Get(':id/lines.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="work-list.csv"')
  async csv(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<string> {
    return workListAsCsv(await this.lists.one(caller, id));
  }

  /** Types lines of a sheet back into the books; each is written whole or not at all, and never twice. */
  @Post(':id/typed')
  @HttpCode(200)
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: TypedSheetAnswer })
  typeBack(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: TypedSheet }) sheet: TypedSheet, @TheCaller() caller: Caller): Promise<TypedSheetAnswer> {
    return this.typing.typeBack(caller, id, sheet);
  }
}
