import type { PlainSaying, Regime } from '@sprigline/contract';
import { effectiveEntries, type PlaceInHistory } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { ENTRY_COLUMNS, type EntryRow, entryOfRow, latestVersionOf, rootIdOf, type StoredEntry } from '../entry/history.queries.ts';

type Told = Extract<PlainSaying, { kind: 'incident' | 'treated' | 'noted' }>;

/** Something told of a place, after its corrections. */
export interface ToldOfPlace<K extends Told['kind']> {
  readonly entry: StoredEntry;
  readonly observedOn: string;
  readonly minute: number | undefined;
  readonly said: Extract<Told, { kind: K }>;
  readonly latestVersionId: string;
  readonly writtenBy: string | null;
}

export type RegimeRow = Regime & { readonly placeName: string };

/** Places and all that they ever lay in: how they were carried about, kept, and what happened there. */
export interface PlaceStory {
  readonly places: ReadonlyMap<string, PlaceInHistory & { readonly name: string; readonly kind: string }>;
  readonly regimes: readonly RegimeRow[];
  readonly incidents: readonly ToldOfPlace<'incident'>[];
  readonly treatments: readonly ToldOfPlace<'treated'>[];
  /** Rounds that told how a place was found. */
  readonly found: readonly ToldOfPlace<'noted'>[];
  /** The moment, by the database's clock. */
  readonly at: string;
}

const ALL = (select: string) => `(SELECT coalesce(json_agg(x), '[]') FROM (${select}) x)`;

const STORY = `
WITH RECURSIVE around AS (
  SELECT unnest($2::uuid[]) AS id
  UNION
  SELECT up.id FROM around a, LATERAL (
    SELECT parent_id AS id FROM place WHERE programme_id = $1 AND id = a.id
    UNION SELECT from_parent_id FROM place_move WHERE programme_id = $1 AND place_id = a.id
    UNION SELECT to_parent_id FROM place_move WHERE programme_id = $1 AND place_id = a.id) up
  WHERE up.id IS NOT NULL
), root AS (
  SELECT e.id FROM (
    SELECT e.id FROM around JOIN entry e ON e.programme_id = $1 AND e.place_id = around.id
    UNION SELECT c.corrects_id FROM around JOIN entry c ON c.programme_id = $1 AND c.kind = 'replaced' AND c.body #>> '{instead,saying,placeId}' = around.id::text
  ) named JOIN entry e ON e.programme_id = $1 AND e.id = named.id
  WHERE e.kind IN ('incident', 'treated') OR (e.kind = 'noted' AND e.body ? 'conditions')
), said AS (
  SELECT ${ENTRY_COLUMNS} FROM root, LATERAL (SELECT * FROM entry WHERE programme_id = $1 AND (id = root.id OR corrects_id = root.id)) e
  WHERE NOT EXISTS (SELECT FROM waiting_entry w WHERE w.programme_id = $1 AND w.entry_id = e.id)
)
SELECT present_time()::text AS at,
  ${ALL(`SELECT p.id, p.name, p.kind, p.parent_id AS "parentId", (
    SELECT coalesce(json_agg(json_build_object('movedOn', m.moved_on, 'fromId', m.from_parent_id, 'toId', m.to_parent_id, 'writtenAt', m.written_at)), '[]')
    FROM place_move m WHERE m.programme_id = $1 AND m.place_id = p.id) AS moves
    FROM around JOIN place p ON p.programme_id = $1 AND p.id = around.id`)} AS places,
  ${ALL(`SELECT r.id, r.place_id AS "placeId", p.name AS "placeName", r.from_day AS "fromDay", r.light_hours AS "lightHours", r.heat_c AS "heatC", r.air, r.cover, r.note,
      lead(r.from_day) OVER (PARTITION BY r.place_id ORDER BY r.from_day) AS "untilDay"
    FROM around JOIN regime r ON r.programme_id = $1 AND r.place_id = around.id JOIN place p ON p.programme_id = $1 AND p.id = r.place_id`)} AS regimes,
  ${ALL('SELECT * FROM said')} AS entries,
  ${ALL('SELECT id, name FROM person WHERE programme_id = $1 AND id IN (SELECT written_by FROM said)')} AS names`;

interface StoryRow extends Record<string, unknown> {
  readonly at: string;
  readonly places: { id: string; name: string; kind: string; parentId: string | null; moves: { movedOn: string; fromId: string | null; toId: string | null; writtenAt: string }[] }[];
  readonly regimes: RegimeRow[];
  readonly entries: EntryRow[];
  readonly names: { id: string; name: string }[];
}

/** One round trip, however many places. Every place that one of them ever lay in is told, too. */
export async function placeStoryOf(sql: UnitOfWork, programmeId: string, placeIds: readonly string[]): Promise<PlaceStory> {
  const row = await sql.prepared<StoryRow>(STORY, [programmeId, [...new Set(placeIds)]]);
  const { at = '', places = [], regimes = [], entries = [], names = [] } = row[0] ?? {};
  return {
    at,
    regimes,
    places: new Map(places.map(({ id, name, kind, parentId, moves }) => [id, { id, name, kind, parentId: parentId ?? undefined, moves: moves.map(moveOf) }])),
    ...toldIn(entries.map(entryOfRow), new Map(names.map(({ id, name }) => [id, name]))),
  };
}

const moveOf = ({ movedOn, fromId, toId, writtenAt }: StoryRow['places'][number]['moves'][number]) =>
  ({ movedOn, fromId: fromId ?? undefined, toId: toId ?? undefined, writtenAt });

/** What stands after all corrections, by kind. */
export function toldIn(entries: readonly StoredEntry[], names: ReadonlyMap<string, string>): Pick<PlaceStory, 'incidents' | 'treatments' | 'found'> {
  const { effective, rivals } = effectiveEntries(entries);
  const roots = new Map(entries.map((entry) => [entry.id, entry]));
  const rivalIds = new Set(rivals.map(({ entryId }) => entryId));
  const told = effective.flatMap(({ id, observedOn, minute, saying }) => {
    const entry = roots.get(id);
    if (!entry) return [];
    const chain = entries.filter((other) => other !== entry && rootIdOf(other) === id && !rivalIds.has(other.id));
    // It was checked by its contract when it was written; what a correction puts instead is of the same kind.
    const said = saying as unknown as Told;
    return [{ entry, observedOn, minute, said, latestVersionId: latestVersionOf(entry, chain), writtenBy: names.get(entry.writtenBy ?? '') ?? null }];
  });
  const of = <K extends Told['kind']>(kind: K) => told.filter((one): one is ToldOfPlace<K> => one.said.kind === kind);
  return { incidents: of('incident'), treatments: of('treated'), found: of('noted') };
}
