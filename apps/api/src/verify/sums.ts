import { EFFECTS_IN } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Finding } from './finding.ts';

/** Balance = in - out, for each batch. */
export async function batchesThatDoNotAddUp(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const rows = await sql.rows<{ batch_id: string; balance: number; moved: number }>(
    `SELECT s.batch_id, s.balance, coalesce(sum(CASE WHEN m.effect = ANY ($2) THEN m.n ELSE -m.n END), 0)::int AS moved
     FROM batch_state s LEFT JOIN movement m ON m.programme_id = s.programme_id AND m.batch_id = s.batch_id
     WHERE s.programme_id = $1 GROUP BY s.batch_id, s.balance
     HAVING s.balance <> coalesce(sum(CASE WHEN m.effect = ANY ($2) THEN m.n ELSE -m.n END), 0) ORDER BY 1`,
    [programmeId, EFFECTS_IN],
  );
  return rows.map(({ batch_id, balance, moved }) => ({
    rule: 'books-do-not-add-up',
    programmeId,
    sentence: `The batch ${batch_id} holds ${balance} plants by its balance and ${moved} by its movements.`,
  }));
}

/** What begins and ends outside a sticking. What passes between its own batches cancels out, or is wrong. */
const BEGINS = ['stuck', 'received', 'found'];
const ENDS = ['died', 'unaccounted', 'notRooted', 'thrownOut', 'givenOut'];

/** Stock + exits = stuck + received + found, for each sticking: what is restuck, mixed or identified passes on to another. */
export async function stickingsThatDoNotAddUp(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const rows = await sql.rows<Sum & { sticking_id: string }>(
    `${sums('b.sticking_id')} AND b.sticking_id IS NOT NULL GROUP BY b.sticking_id ${UNEQUAL} ORDER BY 1`,
    [programmeId, [...BEGINS, 'restuckIn', 'mixedIn', 'identifiedIn'], [...ENDS, 'restuckOut', 'mixedOut', 'identifiedOut']],
  );
  return rows.map(({ sticking_id, came, ended }) => ({
    rule: 'books-do-not-add-up', programmeId, sentence: `The sticking ${sticking_id} began with ${came} plants, and ${ended} are here or have ended.`,
  }));
}

/** The same for all that a programme has. */
export async function programmeThatDoesNotAddUp(sql: UnitOfWork, programmeId: string): Promise<Finding[]> {
  const rows = await sql.rows<Sum & Record<string, unknown>>(`${sums('NULL AS nothing')} ${UNEQUAL}`, [programmeId, BEGINS, ENDS]);
  return rows.map(({ came, ended }) => ({
    rule: 'books-do-not-add-up', programmeId, sentence: `The programme ${programmeId} began with ${came} plants, and ${ended} are here or have ended.`,
  }));
}

interface Sum extends Record<string, unknown> {
  readonly came: number;
  readonly ended: number;
}

const CAME = `coalesce(sum(m.came), 0)`;
const ENDED = `coalesce(sum(s.balance), 0) + coalesce(sum(m.ended), 0)`;
const UNEQUAL = `HAVING ${CAME} <> ${ENDED}`;

const sums = (by: string): string => `
  SELECT ${by}, ${CAME}::int AS came, (${ENDED})::int AS ended
  FROM batch b LEFT JOIN batch_state s ON s.programme_id = b.programme_id AND s.batch_id = b.id
  LEFT JOIN LATERAL (
    SELECT sum(n) FILTER (WHERE effect = ANY ($2)) AS came,
      coalesce(sum(n) FILTER (WHERE effect = ANY ($3)), 0) - coalesce(sum(n) FILTER (WHERE effect = 'takenBack'), 0) AS ended
    FROM movement WHERE programme_id = b.programme_id AND batch_id = b.id) m ON true
  WHERE b.programme_id = $1`;
