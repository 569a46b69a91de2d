import { Body, Controller, Get, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { NewTaxon, ProgrammePath, Taxon, TaxonContent, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { TaxonService } from './taxon.service.ts';

@Controller('programmes/:programme/taxa')
export class TaxonController {
  constructor(private readonly taxa: TaxonService) {}

  /** All taxa of the programme, by scientific name. */
  @Get()
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Taxon.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Taxon[]> {
    return this.taxa.list(caller);
  }

  @Get(':id')
  @Allow(...MEMBERS, 'partner')
  @Tagged()
  @SerializeOptions({ schema: Taxon })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Taxon> {
    return this.taxa.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Taxon })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewTaxon }) taxon: NewTaxon,
    @TheCaller() caller: Caller,
  ): Promise<Taxon> {
    return this.taxa.make(caller, taxon);
  }

  /** Needs If-Match. Another sensitivity cuts the cells of its trees anew. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Taxon })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: TaxonContent }) content: TaxonContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Taxon> {
    return this.taxa.change(caller, id, content, seen);
  }
}
