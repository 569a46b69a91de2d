import { Body, Controller, Get, Param, Patch, Post, SerializeOptions } from '@nestjs/common';
import { ChangeProgramme, OpenProgramme, Programme, ProgrammePath } from '@sprigline/contract';
import { type Caller, type SignedIn, TheAccount, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, MEMBERS, SignedInOnly } from '../http/rule.ts';
import { ProgrammeService } from './programme.service.ts';

@Controller('programmes')
export class ProgrammeController {
  constructor(private readonly programmes: ProgrammeService) {}

  /** Opens another programme on this install. Sending it twice opens it once. */
  @Post()
  @SignedInOnly()
  @Tagged()
  @SerializeOptions({ schema: Programme })
  open(@Body({ schema: OpenProgramme }) opening: OpenProgramme, @TheAccount() account: SignedIn): Promise<Programme> {
    return this.programmes.open(account, opening);
  }

  /** Its name, its zone, and what it calls rooted and ready. */
  @Get(':programme')
  @Allow(...MEMBERS, 'partner')
  @Tagged()
  @SerializeOptions({ schema: Programme })
  one(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Programme> {
    return this.programmes.one(caller);
  }

  /** Needs If-Match. */
  @Patch(':programme')
  @Allow('owner')
  @Tagged()
  @SerializeOptions({ schema: Programme })
  change(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: ChangeProgramme }) change: ChangeProgramme,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Programme> {
    return this.programmes.change(caller, change, seen);
  }
}
