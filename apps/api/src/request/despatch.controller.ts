import { Body, Controller, Get, Header, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { Despatch, DespatchNote, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { despatchAsCsv } from './despatch-csv.ts';
import { DespatchService } from './despatch.service.ts';

@Controller('programmes/:programme/requests/:id')
export class DespatchController {
  constructor(private readonly despatches: DespatchService) {}

  /** Writes the plants out of the books, all in one act. Sending it twice despatches once. */
  @Post('despatch')
  @HttpCode(200)
  @Allow(...DESK)
  @SerializeOptions({ schema: DespatchNote })
  despatch(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: Despatch }) despatch: Despatch, @TheCaller() caller: Caller): Promise<DespatchNote> {
    return this.despatches.despatch(caller, id, despatch);
  }

  /** The paper that goes along: every plant with its family. */
  @Get('despatch')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DespatchNote })
  note(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<DespatchNote> {
    return this.despatches.note(caller, id);
  }

  @Get('despatch.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="despatch-note.csv"')
  async csv(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<string> {
    return despatchAsCsv(await this.despatches.note(caller, id));
  }
}
