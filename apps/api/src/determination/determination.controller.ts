import { Body, Controller, Get, HttpCode, Param, Post, Query, SerializeOptions } from '@nestjs/common';
import { DeterminationEffects, Determinations, EffectsQuery, NewDetermination, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { DeterminationService } from './determination.service.ts';

@Controller('programmes/:programme/stickings/:id')
export class DeterminationController {
  constructor(private readonly determinations: DeterminationService) {}

  /** Of which wild tree the sticking is, and who said so on what evidence. */
  @Get('determinations')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Determinations })
  said(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Determinations> {
    return this.determinations.said(caller, id);
  }

  /** All that another donor tree would change. Nothing is written. */
  @Get('determination-effects')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DeterminationEffects })
  effects(@Param({ schema: ThingPath }) { id }: ThingPath, @Query({ schema: EffectsQuery }) query: EffectsQuery, @TheCaller() caller: Caller): Promise<DeterminationEffects> {
    return this.determinations.effects(caller, id, query.donorTreeId);
  }

  /** The last one by its day holds. Sending it twice writes it once. */
  @Post('determinations')
  @HttpCode(200)
  @Allow(...DESK)
  @SerializeOptions({ schema: Determinations })
  determine(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: NewDetermination }) determination: NewDetermination,
    @TheCaller() caller: Caller,
  ): Promise<Determinations> {
    return this.determinations.determine(caller, id, determination);
  }
}
