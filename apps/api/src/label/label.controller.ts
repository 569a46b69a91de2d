import { Body, Controller, Get, HttpCode, Param, Post, Query, SerializeOptions } from '@nestjs/common';
import { GiveLabel, Label, LabelChoice, LabelLine, LabelPath, LabelQuery, ProgrammePath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { LabelService } from './label.service.ts';

@Controller('programmes/:programme/labels')
export class LabelController {
  constructor(private readonly labels: LabelService) {}

  /** What the labels of some batches, donor trees or places say, in walking order; a label that is missing is null. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LabelLine.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: LabelQuery }) { ids, ...choice }: LabelQuery, @TheCaller() caller: Caller): Promise<LabelLine[]> {
    return this.labels.list(caller, { ...choice, ids: ids?.split(',') });
  }

  /** What bears a label: a batch, also after its plants have gone, a donor tree or a place; or that it is unclaimed. A partner finds those that concern them. */
  @Get(':code')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Label })
  one(@Param({ schema: LabelPath }) { code }: LabelPath, @TheCaller() caller: Caller): Promise<Label> {
    return this.labels.byCode(caller, code);
  }

  /** Puts a label on a batch, a donor tree or a place, beside those that it has: the newest is shown. Sending it twice puts it there once. */
  @Post()
  @HttpCode(200)
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Label })
  give(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: GiveLabel }) given: GiveLabel, @TheCaller() caller: Caller): Promise<Label> {
    return this.labels.give(caller, given);
  }

  /** Draws a code for each of them that has no label, and answers them all. Sending it twice draws once. */
  @Post('missing')
  @HttpCode(200)
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LabelLine.array() })
  giveMissing(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: LabelChoice }) choice: LabelChoice, @TheCaller() caller: Caller): Promise<LabelLine[]> {
    return this.labels.giveMissing(caller, choice);
  }
}
