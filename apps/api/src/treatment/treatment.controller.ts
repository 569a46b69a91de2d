import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { ProgrammePath, type Treatment, TreatmentQuery, Treatments } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { csvOf } from '../http/csv.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { TreatmentService } from './treatment.service.ts';

/** They are written as entries; here is what was done when, and to what. */
@Controller('programmes/:programme')
export class TreatmentController {
  constructor(private readonly treatments: TreatmentService) {}

  /** The last twelve months unless told otherwise. */
  @Get('treatments')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Treatments })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: TreatmentQuery }) query: TreatmentQuery, @TheCaller() caller: Caller): Promise<Treatments> {
    return this.treatments.list(caller, query);
  }

  @Get('treatments.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="treatments.csv"')
  async csv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: TreatmentQuery }) query: TreatmentQuery, @TheCaller() caller: Caller): Promise<string> {
    const { treatments, asOf } = await this.treatments.list(caller, query);
    return csvOf(
      ['day', 'time', 'what', 'place', 'in', 'batch', 'other', 'product', 'registration number', 'rate', 'by whom', 're-entry after hours', 're-entry in words', 'note', 'written by', 'as of'],
      treatments.map((one) => [
        one.observedOn, clock(one.minute), one.what, one.place?.name, one.place?.path.join(' > '), one.batch ? (one.batch.label ?? one.batch.id) : undefined, one.other ?? undefined,
        one.product ?? undefined, one.registration ?? undefined, one.rate ?? undefined, one.appliedBy ?? undefined, one.reentryHours ?? undefined, one.reentry ?? undefined,
        one.note ?? undefined, one.writtenBy ?? undefined, asOf,
      ]),
    );
  }
}

const clock = (minute: Treatment['minute']): string | undefined =>
  minute === null ? undefined : `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
