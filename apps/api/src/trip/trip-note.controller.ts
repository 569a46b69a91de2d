import { Body, Controller, Get, Param, Put, SerializeOptions } from '@nestjs/common';
import { ThingPath, TripNote } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersionIfAny, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { TripNoteService } from './trip-note.service.ts';

/** Notes tell the way: each route needs the grant *see exact places*. */
@Controller('programmes/:programme/trips/:id/note')
export class TripNoteController {
  constructor(private readonly notes: TripNoteService) {}

  @Get()
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: TripNote })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<TripNote> {
    return this.notes.one(caller, id);
  }

  /** Needs If-Match where there is a note already. */
  @Put()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: TripNote })
  write(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: TripNote }) note: TripNote,
    @SeenVersionIfAny() seen: string | undefined,
    @TheCaller() caller: Caller,
  ): Promise<TripNote> {
    return this.notes.write(caller, id, note, seen);
  }
}
