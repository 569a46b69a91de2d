/**
 * What is set aside of each batch, for whom, and how much of it is still there. When plants die,
 * who asked first is served first, and the others are short. Goes into a WITH; $1 is the programme.
 */
export const CLAIMS = `
  SELECT r.request_id, r.batch_id, r.n, greatest(0, least(r.n, s.balance - coalesce(sum(r.n) OVER earlier, 0)))::int AS covered
  FROM reservation r JOIN request q ON q.programme_id = $1 AND q.id = r.request_id
  JOIN batch_state s ON s.programme_id = $1 AND s.batch_id = r.batch_id
  WHERE r.programme_id = $1
  WINDOW earlier AS (PARTITION BY r.batch_id ORDER BY q.asked_on, q.id ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING)`;

/** Plants that an entry took out of a batch, as the books have it now; for \`x\` with entry_id and batch_id. */
export const WENT = `
  (SELECT coalesce(sum(m.n), 0)::int FROM movement m
    WHERE m.programme_id = $1 AND m.entry_id = x.entry_id AND m.batch_id = x.batch_id AND m.effect IN ('wentOn', 'givenOut', 'givenAcross'))`;
