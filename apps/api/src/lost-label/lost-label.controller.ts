import { Controller, Get, Param, Query, SerializeOptions } from '@nestjs/common';
import { LabelCandidates, LostPlantQuery, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { LostLabelQueries } from './lost-label.queries.ts';

@Controller('programmes/:programme/places')
export class LostLabelController {
  constructor(private readonly lost: LostLabelQueries) {}

  /** Of which batches plants without a label may be: what stands there or stood there last, those that are short of plants first. */
  @Get(':id/candidates')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LabelCandidates })
  candidates(@Param({ schema: ThingPath }) { id }: ThingPath, @Query({ schema: LostPlantQuery }) plant: LostPlantQuery, @TheCaller() caller: Caller): Promise<LabelCandidates> {
    return this.lost.candidates(caller, id, plant);
  }
}
