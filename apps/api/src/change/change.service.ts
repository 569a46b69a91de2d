import { Injectable } from '@nestjs/common';
import { type Change, CHANGE_KINDS, type ChangeKind, type ChangesQuery, type KeyScope } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { ChangeQueries, type FeedPlace } from './change.queries.ts';

/** Places looked through for one part where few of them may concern the caller: a part can be empty while there is more. */
const MOST_LOOKED_AT = 5_000;

const LAST_ID = 'ffffffff-ffff-ffff-ffff-ffffffffffff';
const START: FeedPlace = { place: 0, id: LAST_ID };

/** What a key must be let into to be told of a kind; of kinds that are not here no key is told. */
const SCOPE_OF: Readonly<Partial<Record<ChangeKind, KeyScope>>> = {
  entry: 'batches:read', batch: 'batches:read', sticking: 'batches:read', stand: 'stands:read', 'donor-tree': 'donor-trees:read', taxon: 'taxa:read',
  trip: 'trips:read', recipe: 'recipes:read', place: 'places:read', site: 'sites:read', workday: 'workdays:read',
};

@Injectable()
export class ChangeService {
  constructor(
    private readonly database: Database,
    private readonly queries: ChangeQueries,
  ) {}

  /**
   * What changed after a place in the feed, and where to go on: always told, since the feed never ends.
   *
   * @throws DomainError `http/bad-cursor`, `http/restored` from a place that this install never came to
   */
  since(caller: Caller, { after, limit, from }: ChangesQuery): Promise<{ part: Part<Change>; isUpToDate: boolean }> {
    const begin = placeAfter(after) ?? START;
    return this.database.inTransaction(caller, async (sql) => {
      const { lastPlace, moreWait } = await this.queries.placeWhatWaits(sql);
      if (from === 'now' && after === undefined) return { part: { items: [], last: keysOf({ place: lastPlace, id: LAST_ID }) }, isUpToDate: !moreWait };

      if (begin.place > lastPlace) throw new DomainError('http/restored', 'read everything anew, then follow from now on');
      const upTo = Math.min(lastPlace, begin.place + (isToldAll(caller) ? limit : MOST_LOOKED_AT));
      const rows = await this.queries.between(sql, caller, begin, upTo, kindsFor(caller), limit + 1);
      const { items, last } = partOf(rows, limit, keysOf);
      const told = items.map(({ place: _, ...change }) => change);
      // All that was looked through is told: the next part begins behind it, not behind the last thing that was told.
      const onward = last ?? keysOf({ place: upTo, id: LAST_ID });
      return { part: { items: told, last: onward }, isUpToDate: last === undefined && upTo >= lastPlace && !moreWait };
    });
  }
}

/** Nearly every place tells people of the programme something. */
const isToldAll = ({ key, partnerId }: Caller): boolean => key === undefined && partnerId === undefined;

const keysOf = ({ place, id }: FeedPlace): readonly string[] => [String(place), id];

function placeAfter(after: string | undefined): FeedPlace | undefined {
  const [place, id] = keysAfter(after, 2) ?? [];
  return place === undefined || id === undefined ? undefined : { place: Number(place), id };
}

const kindsFor = ({ key }: Caller): readonly ChangeKind[] =>
  key ? CHANGE_KINDS.filter((kind) => kind === 'programme' || key.scopes.includes(SCOPE_OF[kind] ?? '')) : CHANGE_KINDS;
