import { Body, Controller, Delete, Get, HttpCode, Param, Patch, Post, SerializeOptions } from '@nestjs/common';
import { AddPerson, ChangePerson, Person, ProgrammePath, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { PeopleService } from './people.service.ts';

@Controller('programmes/:programme/people')
export class PeopleController {
  constructor(private readonly people: PeopleService) {}

  /** Everybody who works here now, by name. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Person.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Person[]> {
    return this.people.list(caller);
  }

  @Get(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Person })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Person> {
    return this.people.one(caller, id);
  }

  /** Adds somebody by name only. Sending it twice adds them once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Person })
  add(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: AddPerson }) person: AddPerson, @TheCaller() caller: Caller): Promise<Person> {
    return this.people.add(caller, person);
  }

  /** Needs If-Match. */
  @Patch(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Person })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: ChangePerson }) change: ChangePerson,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Person> {
    return this.people.change(caller, id, change, seen);
  }

  /** Removes somebody, effective at once. Volunteers may remove themselves only. */
  @Delete(':id')
  @HttpCode(204)
  @Allow(...MEMBERS)
  remove(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<void> {
    return this.people.remove(caller, id);
  }
}
