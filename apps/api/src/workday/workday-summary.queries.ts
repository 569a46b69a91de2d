import { Injectable } from '@nestjs/common';
import type { WorkdaySpecies, WorkdaySummary } from '@sprigline/contract';
import { contentOrder, effectiveEntries } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { known } from '../database/known.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow } from '../entry/projected.queries.ts';
import type { Caller } from '../http/caller.ts';

type Booked = Omit<WorkdaySpecies, 'batchesCounted' | 'countedAlive' | 'taxonId' | 'name' | 'commonName' | 'donorTrees'>;
interface BatchRow {
  readonly batchId: string;
  readonly taxonId: string | null;
  readonly name: string | null;
  readonly commonName: string | null;
  readonly donorTreeId: string | null;
  readonly booked: Booked;
}

interface Row extends Record<string, unknown> {
  readonly head: Pick<WorkdaySummary, 'id' | 'day' | 'place' | 'tasks' | 'people' | 'children' | 'hours' | 'entries'> & { readonly others: number };
  readonly batches: BatchRow[];
  readonly entries: EntryRow[];
}

const sum = (where: string): string => `coalesce(sum(m.n) FILTER (WHERE ${where}), 0)`;
const gone = (stage: string): string => sum(`m.effect = 'wentOn' AND m.to_stage = '${stage}'`);
const effect = (name: string): string => sum(`m.effect = '${name}'`);

/** What each batch's books got from the day's entries. A miss that a later count took back is none. */
const BOOKED = `json_build_object('stuck', ${effect('stuck')}, 'received', ${effect('received')}, 'lifted', ${gone('liner')}, 'potted', ${gone('potted')}, 'planted', ${gone('planted')},
  'givenOut', ${sum("m.effect IN ('givenOut', 'givenAcross')")}, 'died', ${effect('died')}, 'notRooted', ${effect('notRooted')}, 'thrownOut', ${effect('thrownOut')},
  'unaccounted', ${effect('unaccounted')} - coalesce((SELECT sum(back.n) FROM movement back JOIN own ON own.id = back.undoes_id
    WHERE back.programme_id = $1 AND back.batch_id = t.batch_id AND back.effect = 'takenBack'), 0))`;

const SUMMARY = `
WITH own AS (SELECT id FROM entry WHERE programme_id = $1 AND workday_id = $2),
touched AS (SELECT DISTINCT batch_id FROM entry_touch WHERE programme_id = $1 AND entry_id IN (SELECT id FROM own))
SELECT json_build_object('id', w.id, 'day', w.day, 'place', p.name, 'tasks', w.tasks, 'children', w.children, 'others', w.others, 'hours', w.hours,
    'people', (SELECT coalesce(json_agg(n.name ORDER BY n.name), '[]') FROM workday_person x JOIN person n ON n.programme_id = $1 AND n.id = x.person_id WHERE x.programme_id = $1 AND x.workday_id = w.id),
    'entries', (SELECT count(*) FROM own)) AS head,
  (SELECT coalesce(json_agg(json_build_object('batchId', t.batch_id, 'taxonId', tx.id, 'name', tx.scientific_name, 'commonName', tx.common_name, 'donorTreeId', k.donor_tree_id,
      'booked', (SELECT ${BOOKED} FROM movement m WHERE m.programme_id = $1 AND m.batch_id = t.batch_id AND m.entry_id IN (SELECT id FROM own)))), '[]')
    FROM touched t JOIN batch b ON b.programme_id = $1 AND b.id = t.batch_id LEFT JOIN sticking k ON k.programme_id = $1 AND k.id = b.sticking_id
    LEFT JOIN taxon tx ON tx.programme_id = $1 AND tx.id = k.taxon_id) AS batches,
  (SELECT coalesce(json_agg(x), '[]') FROM (
    SELECT ${ENTRY_COLUMNS} FROM entry e WHERE e.programme_id = $1 AND (e.id IN (SELECT id FROM own) OR e.corrects_id IN (SELECT id FROM own))) x) AS entries
FROM workday w LEFT JOIN place p ON p.programme_id = $1 AND p.id = w.place_id
WHERE w.programme_id = $1 AND w.id = $2`;

@Injectable()
export class WorkdaySummaryQueries {
  constructor(private readonly database: Database) {}

  /** @throws DomainError `record/unknown` */
  async of({ programmeId, ...caller }: Caller, id: string): Promise<WorkdaySummary> {
    const row = await this.database.inTransaction({ programmeId, ...caller }, (sql) => sql.maybe<Row>(SUMMARY, [programmeId, id]));
    const { head: { others, ...head }, batches, entries } = known(row);
    const adults = head.people.length + others;
    return { ...head, adults, peopleHours: head.hours === null ? null : Math.round(head.hours * adults * 10) / 10, species: speciesOf(batches, lastCounts(entries)) };
  }
}

/** Plants alive by the last look at the whole batch, as the entry stands after its corrections. */
function lastCounts(rows: readonly EntryRow[]): Map<string, number> {
  const { effective } = effectiveEntries(rows.map(entryOfRow));
  const counts = new Map<string, number>();
  for (const { saying } of effective.toSorted(contentOrder)) {
    if (saying.kind === 'counted' && saying.sampleOf === undefined) counts.set(saying.batchId, saying.alive);
    if (saying.kind === 'checked' && saying.batchId !== undefined) counts.set(saying.batchId, saying.alive);
  }
  return counts;
}

function speciesOf(batches: readonly BatchRow[], counts: ReadonlyMap<string, number>): WorkdaySpecies[] {
  const ids = [...new Set(batches.map(({ taxonId }) => taxonId))];
  return ids
    .map((taxonId) => {
      const own = batches.filter((batch) => batch.taxonId === taxonId);
      const counted = own.flatMap(({ batchId }) => counts.get(batchId) ?? []);
      return {
        taxonId, name: own[0]?.name ?? null, commonName: own[0]?.commonName ?? null,
        ...added(own.map(({ booked }) => booked)),
        batchesCounted: counted.length,
        countedAlive: counted.reduce((total, n) => total + n, 0),
        donorTrees: new Set(own.flatMap(({ donorTreeId }) => donorTreeId ?? [])).size,
      };
    })
    .sort((one, other) => (one.name ?? '\uFFFF').localeCompare(other.name ?? '\uFFFF'));
}

const NOTHING: Booked = { stuck: 0, received: 0, lifted: 0, potted: 0, planted: 0, givenOut: 0, died: 0, unaccounted: 0, notRooted: 0, thrownOut: 0 };

const added = (all: readonly Booked[]): Booked =>
  Object.fromEntries(Object.keys(NOTHING).map((name) => [name, all.reduce((total, one) => total + one[name as keyof Booked], 0)])) as unknown as Booked;
