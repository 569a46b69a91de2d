import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { Pack, PlacePack, ProgrammePath, type Round, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { RoundQueries } from '../round/round.queries.ts';
import { SealQueries } from '../seal/seal.queries.ts';
import { PackQueries } from './pack.queries.ts';

@Controller('programmes/:programme')
export class PackController {
  constructor(
    private readonly packs: PackQueries,
    private readonly rounds: RoundQueries,
    private readonly seals: SealQueries,
  ) {}

  /** What a phone takes along wherever one walks: people, workdays, places, and what a trip chooses from. No exact place is in it. */
  @Get('pack')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Pack })
  async whole(@Param({ schema: ProgrammePath }) _path: ProgrammePath, @TheCaller() caller: Caller): Promise<Pack> {
    return { ...(await this.packs.whole(caller)), seal: await this.seals.current(caller) };
  }

  /** The walk through a place, with what the books of its first 500 batches are made of. */
  @Get('places/:id/pack')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: PlacePack })
  async place(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<PlacePack> {
    return this.#withBooks(caller, await this.rounds.at(caller, id));
  }

  /** The same along a printed list: its batches in printed order, wherever they stand. */
  @Get('work-lists/:id/pack')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: PlacePack })
  async workList(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<PlacePack> {
    return this.#withBooks(caller, await this.rounds.along(caller, id));
  }

  async #withBooks(caller: Caller, round: Round): Promise<PlacePack> {
    const batches = round.stops.flatMap((stop) => stop.batches.map((batch) => batch.id));
    return { round, ...(await this.packs.booksOf(caller, batches)) };
  }
}
