import { Body, Controller, Get, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { NewPlot, NewSite, ProgrammePath, Site, SiteContent, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { SiteService } from './site.service.ts';

@Controller('programmes/:programme/sites')
export class SiteController {
  constructor(private readonly sites: SiteService) {}

  /** All sites of the programme with their plots, in walking order. */
  @Get()
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Site.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Site[]> {
    return this.sites.list(caller);
  }

  @Get(':id')
  @Allow(...MEMBERS, 'partner')
  @Tagged()
  @SerializeOptions({ schema: Site })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Site> {
    return this.sites.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Site })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewSite }) site: NewSite,
    @TheCaller() caller: Caller,
  ): Promise<Site> {
    return this.sites.make(caller, site);
  }

  /** Sending it twice makes it once. A plot is changed as a place. */
  @Post(':id/plots')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Site })
  addPlot(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: NewPlot }) plot: NewPlot,
    @TheCaller() caller: Caller,
  ): Promise<Site> {
    return this.sites.addPlot(caller, id, plot);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Site })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: SiteContent }) content: SiteContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Site> {
    return this.sites.change(caller, id, content, seen);
  }
}
