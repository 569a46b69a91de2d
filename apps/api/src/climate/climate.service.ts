import { Injectable } from '@nestjs/common';
import { type Climate, type ClimateQuery, type ClimateWritten, type Problem, REFUSALS, type WriteClimate } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { addReadings, climateAt, everyReading, type Fate, type Range } from './climate.queries.ts';

/** So many days are read where nobody said which. */
const DAYS_SHOWN = 30;

@Injectable()
export class ClimateService {
  constructor(private readonly database: Database) {}

  /** Each for itself: one that is refused does not keep the others out. Sent again, they are written once. */
  write(caller: Caller, { readings }: WriteClimate): Promise<ClimateWritten> {
    return this.database.inTransaction(caller, async (sql) => {
      const { added, fates } = await addReadings(sql, caller, readings);
      return { readings: fates.map((fate) => ({ id: fate.id, ...outcomeOf(fate, added) })) };
    });
  }

  /** @throws DomainError `record/unknown` */
  at(caller: Caller, placeId: string, query: ClimateQuery): Promise<Climate> {
    return this.database.inTransaction(caller, async (sql) => {
      const range = await rangeOf(sql, caller, placeId, query);
      return { ...range, ...(await climateAt(sql, caller.programmeId, placeId, caller.zone, range)) };
    });
  }

  /** @throws DomainError `record/unknown` */
  every(caller: Caller, placeId: string, query: ClimateQuery): Promise<Climate['latest']> {
    return this.database.inTransaction(caller, async (sql) => everyReading(sql, caller.programmeId, placeId, caller.zone, await rangeOf(sql, caller, placeId, query)));
  }

  /** It stays readable, and is counted no more. Done twice, the first reason stands. @throws DomainError `record/unknown` */
  async setAside(caller: Caller, id: string, reason: string): Promise<void> {
    await this.database.inTransaction(caller, async (sql) => {
      const row = await sql.maybe(
        `UPDATE climate_reading SET set_aside_at = coalesce(set_aside_at, present_time()), set_aside_by = coalesce(set_aside_by, $3), set_aside_reason = coalesce(set_aside_reason, $4)
         WHERE programme_id = $1 AND id = $2 RETURNING id`,
        [caller.programmeId, id, caller.personId, reason],
      );
      if (!row) throw new DomainError('record/unknown', 'no reading has this id');
    });
  }
}

async function rangeOf(sql: UnitOfWork, caller: Caller, placeId: string, { from, until }: ClimateQuery): Promise<Range> {
  const row = await sql.maybe<{ from: string; until: string }>(
    `SELECT coalesce($3::date, coalesce($4::date, present_day($5)) - ${DAYS_SHOWN - 1})::text AS "from", coalesce($4::date, greatest(present_day($5), $3::date))::text AS until
     FROM place WHERE programme_id = $1 AND id = $2`,
    [caller.programmeId, placeId, from ?? null, until ?? null, caller.zone],
  );
  if (!row) throw new DomainError('record/unknown', 'no place has this id');
  return row;
}

function outcomeOf(fate: Fate, added: ReadonlySet<string>): { status: 'written' | 'already' | 'refused'; problem?: Problem } {
  if (added.has(fate.id)) return { status: 'written' };
  if (fate.isSame || (!fate.hasId && fate.isSameMoment)) return { status: 'already' };
  return { status: 'refused', problem: problemOf(fate) };
}

function problemOf({ hasPlace, isFuture, hasId }: Fate): Problem {
  if (!hasPlace) return refusal('record/no-such-place', 'this programme has no place with that id');
  if (isFuture) return refusal('climate/moment-in-future', 'look at the clock of the logger, and at its zone');
  if (hasId) return refusal('record/id-reused', 'that id was sent before with other content: make a new id for a new reading');
  return refusal('climate/moment-taken', 'set the wrong one aside first, then send this one again');
}

const refusal = (code: string, detail: string): Problem => ({ type: `/problems/${code}`, title: REFUSALS[code]?.title ?? code, status: REFUSALS[code]?.status ?? 422, detail });
