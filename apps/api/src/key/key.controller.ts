import { Body, Controller, Delete, Get, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { Key, MadeKey, MakeKey, ProgrammePath, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK } from '../http/rule.ts';
import { KeyService } from './key.service.ts';

@Controller('programmes/:programme/keys')
export class KeyController {
  constructor(private readonly keys: KeyService) {}

  /** All keys, the newest first; of each only its start. */
  @Get()
  @Allow(...DESK)
  @SerializeOptions({ schema: Key.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Key[]> {
    return this.keys.list(caller);
  }

  /** Makes a key and answers it, this once. */
  @Post()
  @Allow(...DESK)
  @SerializeOptions({ schema: MadeKey })
  make(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: MakeKey }) key: MakeKey, @TheCaller() caller: Caller): Promise<MadeKey> {
    return this.keys.make(caller, key);
  }

  /** It opens nothing from the very next request on. */
  @Delete(':id')
  @HttpCode(204)
  @Allow(...DESK)
  revoke(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<void> {
    return this.keys.revoke(caller, id);
  }
}
