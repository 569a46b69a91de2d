import { Injectable } from '@nestjs/common';
import type { LeaveOrCall, LeaveOrCallQuery } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import { DueDaysQueries } from '../due/due-days.queries.ts';
import type { Caller } from '../http/caller.ts';
import { HeadQueries } from '../reading/head.queries.ts';
import { type FollowedSticking, FollowedQueries } from '../time-to-root/followed.queries.ts';
import { byWhatTheyBring, type Known, knownOf, trayTold } from './tray-told.ts';
import { type TrayRow, WaitingTrayQueries } from './waiting-tray.queries.ts';

@Injectable()
export class LeaveOrCallService {
  constructor(
    private readonly database: Database,
    private readonly headQueries: HeadQueries,
    private readonly trayQueries: WaitingTrayQueries,
    private readonly followedQueries: FollowedQueries,
    private readonly dueDays: DueDaysQueries,
  ) {}

  /** What waiting would bring each tray that is undecided, from the history of its species in the whole programme. */
  async trays(caller: Caller, { batchId, limit, ...filter }: Omit<LeaveOrCallQuery, 'limit'> & { readonly limit?: number | undefined }): Promise<LeaveOrCall> {
    const { head, trays, followed, verdicts } = await this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      const trays = await this.trayQueries.of(sql, caller.programmeId, filter, head.asOf, batchId);
      const taxa = [...new Set(trays.map(({ taxonId }) => taxonId))];
      const followed = await this.followedQueries.newestOf(sql, caller.programmeId, taxa);
      return { head, trays, followed, verdicts: await this.dueDays.verdicts(sql, caller.programmeId, taxa) };
    });
    const known = knownBySpecies(trays, followed);
    const told = trays.flatMap((tray) => {
      const species = known.get(tray.taxonId);
      return species ? [trayTold(tray, species, verdicts.get(tray.taxonId) ?? 0, head.asOf)] : [];
    });
    told.sort(byWhatTheyBring);
    return { ...head, inAll: told.length, trays: told.slice(0, limit), grounds: [...known.values()].map(({ ground }) => ground) };
  }
}

function knownBySpecies(trays: readonly TrayRow[], followed: readonly FollowedSticking[]): ReadonlyMap<string, Known> {
  const species = new Map(trays.map((tray) => [tray.taxonId, tray]));
  return new Map([...species].map(([taxonId, tray]) => {
    const stickings = followed.filter((sticking) => sticking.taxonId === taxonId);
    const own = stickings.flatMap(({ donorId, stickingId, followed: rows }) => rows.map((row) => ({ ...row, unit: donorId ?? stickingId })));
    return [taxonId, knownOf(tray, own, new Set(stickings.flatMap(({ donorId }) => donorId ?? [])).size)];
  }));
}
