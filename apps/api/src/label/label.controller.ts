import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { Label, LabelPath } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { LabelQueries } from './label.queries.ts';

@Controller('programmes/:programme/labels')
export class LabelController {
  constructor(private readonly labels: LabelQueries) {}

  /** The batch that bears a label, also after its plants have gone. A partner finds those that concern them. */
  @Get(':code')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Label })
  async one(@Param({ schema: LabelPath }) { code }: LabelPath, @TheCaller() caller: Caller): Promise<Label> {
    const label = await this.labels.byCode(caller, code);
    if (!label) throw new DomainError('batch/unknown', `no batch bears the label ${code}`, { label: code });
    return label;
  }
}
