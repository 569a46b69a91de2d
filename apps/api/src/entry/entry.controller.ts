import { Body, Controller, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { Previewed, ProgrammePath, WriteEntries, Written } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { EntryService } from './entry.service.ts';

@Controller('programmes/:programme/entries')
export class EntryController {
  constructor(private readonly entries: EntryService) {}

  /** Writes entries and answers item by item; a bad one does not keep the others out, unless they are sent `together`. */
  @Post()
  @HttpCode(200)
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Written })
  write(
    @Param({ schema: ProgrammePath }) _path: ProgrammePath,
    @Body({ schema: WriteEntries }) request: WriteEntries,
    @TheCaller() caller: Caller,
  ): Promise<Written> {
    return this.entries.write(caller, request);
  }

  /** What the books would make of them. Nothing is written. */
  @Post('preview')
  @HttpCode(200)
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Previewed })
  preview(
    @Param({ schema: ProgrammePath }) _path: ProgrammePath,
    @Body({ schema: WriteEntries }) request: WriteEntries,
    @TheCaller() caller: Caller,
  ): Promise<Previewed> {
    return this.entries.preview(caller, request);
  }
}
