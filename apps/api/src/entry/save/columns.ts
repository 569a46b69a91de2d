import type { Columns } from './statement.ts';

export const ENTRY: Columns = {
  id: 'uuid', kind: 'text', observed_on: 'date', observed_minute: 'smallint', body: 'jsonb', corrects_id: 'uuid', saw_version_id: 'uuid',
  place_id: 'uuid', donor_tree_id: 'uuid', trip_id: 'uuid', workday_id: 'uuid', line: 'integer', note: 'text', seen_by: 'uuid',
  written_by: 'uuid', delivered_by: 'text', door: 'text', written_at: 'timestamptz', received_at: 'timestamptz', received_on: 'date',
  clock_offset_s: 'integer', clock_unsure: 'boolean', author_unverified: 'boolean',
};

export const STICKING: Columns = {
  id: 'uuid', opening_entry_id: 'uuid', donor_tree_id: 'uuid', taxon_id: 'uuid', bundle_id: 'uuid', recipe_version_id: 'uuid',
  from_batch_id: 'uuid', second_try_of_id: 'uuid', generation: 'smallint', stuck_on: 'date',
};

export const BATCH: Columns = {
  id: 'uuid', sticking_id: 'uuid', stage: 'stage', parent_id: 'uuid', opening_entry_id: 'uuid', opening_place_id: 'uuid', opened_on: 'date',
  rows: 'text', container: 'text', medium: 'text',
};

export const BATCH_KEY: Columns = { batch_id: 'uuid' };

export const STATE: Columns = {
  balance: 'integer', place_id: 'uuid', rooted_now: 'integer', rooted_ever: 'integer', rooted_look: 'look', rooted_on: 'date',
  last_seen_on: 'date', last_look: 'look', not_found: 'integer', held: 'boolean', held_by: 'uuid[]', unconfirmed: 'boolean', called_on: 'date',
  strong_look_on: 'date', sampled_on: 'date', looked_over_on: 'date',
};

export const IN_SEQUENCE: Columns = { batch_id: 'uuid', seq: 'integer' };

export const MOVEMENT: Columns = {
  entry_id: 'uuid', day: 'date', effect: 'text', n: 'integer', cause: 'text', to_stage: 'stage', undoes_id: 'uuid', last_seen: 'date',
};

export const STAY: Columns = { place_id: 'uuid', from_day: 'date', to_day: 'date', entry_id: 'uuid' };

export const FLAG_KEY: Columns = { batch_id: 'uuid', entry_id: 'uuid', code: 'text' };
export const FLAG: Columns = { day: 'date', n: 'integer' };

export const PARTNER_KEY: Columns = { batch_id: 'uuid', partner_id: 'uuid', relation: 'text' };

export const TALLY_KEY: Columns = { sticking_id: 'uuid', stage: 'stage' };
export const TALLY_COUNTS = [
  'came_in', 'gone_on', 'died', 'unaccounted', 'not_rooted', 'thrown_out', 'given_out', 'restuck', 'mixed', 'mixed_in', 'here',
  'not_found',
] as const;
export const TALLY: Columns = { ...Object.fromEntries(TALLY_COUNTS.map((name) => [name, 'integer'])), died_of: 'jsonb' };
