-- What donor trees are: which of them are one clone, and in what state each was seen.
-- Statements are only added; the last one on a pair of trees, and the last sighting of
-- a tree, hold. What follows from them is kept at the donor tree itself.
--
-- Locks: new tables only. Undo by hand: drop both tables.

CREATE TABLE clone_statement (
  programme_id  uuid           NOT NULL,
  id            uuid           NOT NULL,
  -- The pair, the smaller id first, so that both ways of naming it are one.
  donor_tree_id uuid           NOT NULL,
  other_tree_id uuid           NOT NULL,
  -- False takes an earlier statement back.
  is_same       boolean        NOT NULL,
  said_on       date           NOT NULL,
  -- Empty: grouped before statements were kept.
  by_person_id  uuid,
  evidence      words          NOT NULL,
  written_at    timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT clone_statement_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT clone_statement_is_of_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT clone_statement_is_of_another_donor_tree FOREIGN KEY (programme_id, other_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT clone_statement_is_by_a_person FOREIGN KEY (programme_id, by_person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT clone_statement_names_a_pair_once CHECK (donor_tree_id < other_tree_id)
);
CREATE INDEX clone_statement_by_donor_tree ON clone_statement (programme_id, donor_tree_id);
CREATE INDEX clone_statement_by_other_tree ON clone_statement (programme_id, other_tree_id);

CREATE TABLE tree_sighting (
  programme_id  uuid           NOT NULL,
  id            uuid           NOT NULL,
  donor_tree_id uuid           NOT NULL,
  seen_on       date           NOT NULL,
  state         text           NOT NULL,
  by_person_id  uuid           NOT NULL,
  -- Everybody in the programme reads it: no directions.
  note          text,
  written_at    timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT tree_sighting_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT tree_sighting_is_of_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT tree_sighting_is_by_a_person FOREIGN KEY (programme_id, by_person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT tree_sighting_state_is_known CHECK (state IN ('standing', 'notSeen', 'dead', 'unknown'))
);
CREATE INDEX tree_sighting_by_donor_tree ON tree_sighting (programme_id, donor_tree_id, seen_on);
CREATE INDEX determination_by_sticking ON determination (programme_id, sticking_id, determined_on);

CALL guard_rows_of('clone_statement', 'SELECT, INSERT');
CALL hide_from_partners('clone_statement');
CALL guard_rows_of('tree_sighting', 'SELECT, INSERT');
CALL hide_from_partners('tree_sighting');
CREATE TRIGGER clone_statement_is_never_rewritten BEFORE UPDATE OR DELETE ON clone_statement FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER tree_sighting_is_never_rewritten BEFORE UPDATE OR DELETE ON tree_sighting FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();

-- Trees that were grouped by hand become statements, so that they can be taken back like all others.
INSERT INTO clone_statement (programme_id, id, donor_tree_id, other_tree_id, is_same, said_on, evidence)
SELECT t.programme_id, gen_random_uuid(), first.id, t.id, true, CURRENT_DATE, 'grouped before statements were kept'
FROM donor_tree t
JOIN LATERAL (SELECT id FROM donor_tree f WHERE f.programme_id = t.programme_id AND f.clone_group_id = t.clone_group_id ORDER BY id LIMIT 1) first ON first.id < t.id
WHERE t.clone_group_id IS NOT NULL;
