import { Body, Controller, Get, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { NewPartner, ProgrammePath, Partner, PartnerContent, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { PartnerService } from './partner.service.ts';

@Controller('programmes/:programme/partners')
export class PartnerController {
  constructor(private readonly partners: PartnerService) {}

  /** All partners of the programme, by name. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Partner.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Partner[]> {
    return this.partners.list(caller);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Partner })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Partner> {
    return this.partners.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Partner })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewPartner }) partner: NewPartner,
    @TheCaller() caller: Caller,
  ): Promise<Partner> {
    return this.partners.make(caller, partner);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Partner })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: PartnerContent }) content: PartnerContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Partner> {
    return this.partners.change(caller, id, content, seen);
  }
}
