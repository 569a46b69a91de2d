import type pg from 'pg';
import { newId } from './people.ts';

/**
 * Books of a programme written straight into the projections, for tests of what is read
 * from them. Only the numbers are true: nobody has seen these plants.
 */
export interface ByHand {
  readonly sql: pg.Client;
  readonly programmeId: string;
  /** One entry that stands for all that opened anything. */
  readonly entryId: string;
  readonly placeId: string;
}

/** What became of a sticking at one stage; what is left out is 0. */
export interface StageByHand {
  readonly cameIn: number;
  readonly goneOn?: number;
  readonly died?: Readonly<Record<string, number>>;
  readonly unaccounted?: number;
  readonly notRooted?: number;
  readonly thrownOut?: number;
  readonly givenOut?: number;
  readonly here?: number;
  readonly notFound?: number;
  /** Of cuttings here, those told to be rooted; left out, nobody told. */
  readonly rooted?: number;
}

export async function byHand(sql: pg.Client, programmeId: string): Promise<ByHand> {
  const [entryId, placeId] = [newId(), newId()];
  await sql.query(
    `INSERT INTO entry (programme_id, id, kind, observed_on, body, delivered_by, door, written_at, received_on)
     VALUES ($1, $2, 'noted', '2025-11-20', '{}', 'by hand', 'desk', '2025-11-20', '2025-11-20')`,
    [programmeId, entryId],
  );
  await sql.query(`INSERT INTO place (programme_id, id, kind, name) VALUES ($1, $2, 'house', $3)`, [programmeId, placeId, `House ${placeId.slice(-4)}`]);
  return { sql, programmeId, entryId, placeId };
}

export async function taxonByHand({ sql, programmeId }: ByHand, scientific: string, common: string): Promise<string> {
  const id = newId();
  await sql.query('INSERT INTO taxon (programme_id, id, scientific_name, common_name) VALUES ($1, $2, $3, $4)', [programmeId, id, scientific, common]);
  return id;
}

export async function standByHand({ sql, programmeId }: ByHand, name: string): Promise<string> {
  const id = newId();
  await sql.query('INSERT INTO stand (programme_id, id, name) VALUES ($1, $2, $3)', [programmeId, id, name]);
  return id;
}

export async function treeByHand(
  { sql, programmeId }: ByHand,
  tree: { label: string; standId: string; taxonId: string; state?: string; ageClass?: string; cloneGroupId?: string },
): Promise<string> {
  const id = newId();
  await sql.query(
    'INSERT INTO donor_tree (programme_id, id, label, stand_id, taxon_id, state, age_class, clone_group_id) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)',
    [programmeId, id, tree.label, tree.standId, tree.taxonId, tree.state ?? 'standing', tree.ageClass ?? null, tree.cloneGroupId ?? null],
  );
  return id;
}

/** @param stages tallies by stage; a batch stands in the house for each that has plants */
export async function stickingByHand(
  hand: ByHand,
  sticking: { taxonId: string; treeId: string | null; stuckOn: string; mayBe?: readonly string[]; recipeVersionId?: string },
  stages: Readonly<Partial<Record<'cutting' | 'liner' | 'potted' | 'planted', StageByHand>>>,
): Promise<string> {
  const { sql, programmeId, entryId } = hand;
  const id = newId();
  await sql.query(
    'INSERT INTO sticking (programme_id, id, opening_entry_id, donor_tree_id, taxon_id, stuck_on, recipe_version_id) VALUES ($1, $2, $3, $4, $5, $6, $7)',
    [programmeId, id, entryId, sticking.treeId, sticking.taxonId, sticking.stuckOn, sticking.recipeVersionId ?? null],
  );
  for (const tree of sticking.mayBe ?? []) await sql.query('INSERT INTO sticking_candidate VALUES ($1, $2, $3)', [programmeId, id, tree]);
  for (const [stage, told] of Object.entries(stages)) {
    await tally(hand, id, stage, told);
    await batch(hand, id, stage, sticking.stuckOn, told);
  }
  return id;
}

async function tally({ sql, programmeId }: ByHand, stickingId: string, stage: string, told: StageByHand): Promise<void> {
  const died = Object.values(told.died ?? {}).reduce((sum, n) => sum + n, 0);
  await sql.query(
    `INSERT INTO tally (programme_id, sticking_id, stage, came_in, gone_on, died, unaccounted, not_rooted, thrown_out, given_out, restuck, here, not_found, died_of)
     VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, 0, $11, $12, $13)`,
    [programmeId, stickingId, stage, told.cameIn, told.goneOn ?? 0, died, told.unaccounted ?? 0, told.notRooted ?? 0, told.thrownOut ?? 0,
      told.givenOut ?? 0, told.here ?? 0, told.notFound ?? 0, told.died ?? {}],
  );
}

async function batch({ sql, programmeId, entryId, placeId }: ByHand, stickingId: string, stage: string, openedOn: string, told: StageByHand): Promise<void> {
  const id = newId();
  await sql.query(
    'INSERT INTO batch (programme_id, id, sticking_id, stage, opening_entry_id, opening_place_id, opened_on) VALUES ($1, $2, $3, $4, $5, $6, $7)',
    [programmeId, id, stickingId, stage, entryId, placeId, openedOn],
  );
  const gone = stage === 'cutting' ? (told.goneOn ?? 0) : 0;
  await sql.query(
    'INSERT INTO batch_state (programme_id, batch_id, balance, place_id, rooted_now, rooted_ever) VALUES ($1, $2, $3, $4, $5, $6)',
    [programmeId, id, told.here ?? 0, placeId, told.rooted ?? null, gone + (told.rooted ?? 0)],
  );
}
