import type { UnitOfWork } from '../../database/unit-of-work.ts';
import type { ChangedBooks } from '../books/book-keeper.ts';
import type { Additions } from '../judge/additions.ts';
import type { OpenPages } from '../pages/open-pages.ts';
import { addedRows } from './added-rows.ts';
import {
  BATCH, BATCH_KEY, ENTRY, FLAG, FLAG_KEY, IN_SEQUENCE, MOVEMENT, PARTNER_KEY, STATE, STAY, STICKING, TALLY, TALLY_COUNTS, TALLY_KEY,
} from './columns.ts';
import { changesOf } from './changes.ts';
import { Statement } from './statement.ts';
import { tallyChanges } from './tally-rows.ts';

/** Writes what was added and what follows from it, in one round trip. */
export async function save(sql: UnitOfWork, programmeId: string, additions: Additions, changed: readonly ChangedBooks[], pages: OpenPages): Promise<void> {
  const statement = new Statement(programmeId);
  add(statement, additions);
  project(statement, changed, pages);
  await statement.run(sql);
}

function add(statement: Statement, additions: Additions): void {
  const rows = addedRows(additions);
  statement
    .insert('entry', ENTRY, rows.entries)
    .insert('sticking', STICKING, rows.stickings)
    .insert('sticking_candidate', { sticking_id: 'uuid', donor_tree_id: 'uuid' }, rows.candidates)
    .insert('batch', BATCH, rows.batches)
    .insert('mixed_part', { batch_id: 'uuid', from_batch_id: 'uuid', n: 'integer' }, rows.parts)
    .insert('label', { code: 'text', batch_id: 'uuid' }, rows.labels)
    .insert('entry_touch', { batch_id: 'uuid', entry_id: 'uuid' }, rows.touches, 'ON CONFLICT DO NOTHING')
    .insert('waiting_entry', { entry_id: 'uuid', waits_for_id: 'uuid' }, rows.waits, 'ON CONFLICT DO NOTHING')
    .delete('waiting_entry', { entry_id: 'uuid' }, rows.settled, 't.entry_id = x.entry_id');
}

/** Adds to a statement what follows from the entries, as the difference to what was there. */
export function project(statement: Statement, changed: readonly ChangedBooks[], pages: OpenPages): void {
  const all = changed.map((each) => changesOf(each, pages));
  const of = <K extends keyof (typeof all)[number]>(name: K) => all.flatMap((changes) => changes[name]);
  const sameBatch = 't.batch_id = x.batch_id AND';
  statement
    .put('batch_state', BATCH_KEY, STATE, of('state'))
    .put('movement', IN_SEQUENCE, MOVEMENT, of('movements'))
    .delete('movement', IN_SEQUENCE, of('movementsFrom'), `${sameBatch} t.seq >= x.seq`)
    .put('stay', IN_SEQUENCE, STAY, of('stays'))
    .delete('stay', IN_SEQUENCE, of('staysFrom'), `${sameBatch} t.seq >= x.seq`)
    .put('flag', FLAG_KEY, FLAG, of('flags'))
    .delete('flag', FLAG_KEY, of('flagsGone'), `${sameBatch} t.entry_id = x.entry_id AND t.code = x.code`)
    .insert('batch_partner', PARTNER_KEY, of('partners'), 'ON CONFLICT DO NOTHING')
    .delete('batch_partner', PARTNER_KEY, of('partnersGone'), `${sameBatch} t.partner_id = x.partner_id AND t.relation = x.relation`)
    .insert('tally', { ...TALLY_KEY, ...TALLY }, tallyChanges(changed), ADD_TO_TALLY);
}

const ADD_TO_TALLY = `ON CONFLICT (programme_id, sticking_id, stage) DO UPDATE SET
  ${TALLY_COUNTS.map((name) => `${name} = tally.${name} + excluded.${name}`).join(', ')},
  died_of = (SELECT coalesce(jsonb_object_agg(cause, n), '{}') FROM (
    SELECT key AS cause, sum(value::int) AS n
    FROM (SELECT * FROM jsonb_each_text(tally.died_of) UNION ALL SELECT * FROM jsonb_each_text(excluded.died_of)) AS deaths
    GROUP BY key HAVING sum(value::int) <> 0) AS causes)`;
