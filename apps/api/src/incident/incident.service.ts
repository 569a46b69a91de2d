import { Injectable } from '@nestjs/common';
import type { IncidentQuery, IncidentShown } from '@sprigline/contract';
import { DomainError, overlaps, type Whereabouts, whereabouts } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { placeStoryOf } from '../place/place-story.queries.ts';
import { incidentsIn, placesWithIncidents } from './incident.queries.ts';

@Injectable()
export class IncidentService {
  constructor(private readonly database: Database) {}

  /** The newest first. @throws DomainError `record/unknown`, `batch/unknown` */
  list(caller: Caller, query: IncidentQuery): Promise<IncidentShown[]> {
    const { placeId, batchId, from = '0001-01-01', until, state } = query;
    return this.database.inTransaction(caller, async (sql) => {
      const stays = batchId === undefined ? [] : await staysOf(sql, caller.programmeId, batchId);
      const asked = [...stays.map((stay) => stay.placeId), ...(placeId === undefined ? [] : [placeId])];
      const story = await placeStoryOf(sql, caller.programmeId, asked.length > 0 ? asked : await placesWithIncidents(sql, caller.programmeId));
      if (placeId !== undefined && !story.places.has(placeId)) throw new DomainError('record/unknown', 'no place has this id');

      const where = batchId === undefined ? undefined : whereabouts(stays, story.places);
      const around = placeId === undefined ? undefined : whereabouts([{ placeId, from: '0001-01-01' }], story.places);
      return incidentsIn(story, caller).filter((incident) => {
        const days = { from: incident.from, until: incident.until ?? undefined };
        if (state !== undefined && (state === 'open') !== (incident.until === null)) return false;
        return overlaps({ from, until }, days) && wasThere(where, incident.placeId, days) && wasThere(around, incident.placeId, days);
      });
    });
  }

  /** @throws DomainError `incident/unknown` */
  one(caller: Caller, id: string): Promise<IncidentShown> {
    return this.database.inTransaction(caller, async (sql) => {
      const { placeIds } = await sql.one<{ placeIds: string[] | null }>(
        `SELECT array_remove(array_agg(coalesce(e.body #>> '{instead,saying,placeId}', e.place_id::text)), NULL) AS "placeIds"
         FROM entry e WHERE e.programme_id = $1 AND (e.id = $2 OR e.corrects_id = $2)`,
        [caller.programmeId, id],
      );
      const story = await placeStoryOf(sql, caller.programmeId, placeIds ?? []);
      const incident = incidentsIn(story, caller).find(({ entryId }) => entryId === id);
      if (!incident) throw new DomainError('incident/unknown', 'no incident has this id, or it was withdrawn');
      return incident;
    });
  }
}

async function staysOf(sql: UnitOfWork, programmeId: string, batchId: string): Promise<{ placeId: string; from: string; until: string | undefined }[]> {
  const rows = await sql.rows<{ placeId: string; from: string; until: string | null }>(
    'SELECT place_id AS "placeId", from_day AS "from", to_day AS until FROM stay WHERE programme_id = $1 AND batch_id = $2 ORDER BY seq', [programmeId, batchId],
  );
  if (rows.length === 0) throw new DomainError('batch/unknown', 'no batch has this id, or it never stood anywhere', { batchId });
  return rows.map((row) => ({ ...row, until: row.until ?? undefined }));
}

const wasThere = (where: readonly Whereabouts[] | undefined, placeId: string, days: { from: string; until?: string | undefined }): boolean =>
  where === undefined || where.some((so) => so.path.includes(placeId) && overlaps(so, days));
