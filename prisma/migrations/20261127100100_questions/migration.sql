-- A question about a doubtful entry goes to a person, who can answer it.
--
-- Locks: review, briefly. Undo by hand: drop the columns and the index, and put the old check back.

ALTER TABLE review
  -- Whom a question was put to.
  ADD COLUMN asked_of   uuid,
  -- The question that is answered.
  ADD COLUMN answers_id uuid,
  DROP CONSTRAINT review_decision_is_known,
  ADD CONSTRAINT review_decision_is_known CHECK (decision IN ('accepted', 'mended', 'asked', 'answered', 'assigned')),
  ADD CONSTRAINT review_asks_a_person FOREIGN KEY (programme_id, asked_of) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  ADD CONSTRAINT review_answers_a_question FOREIGN KEY (programme_id, answers_id) REFERENCES review (programme_id, id) ON DELETE RESTRICT,
  ADD CONSTRAINT review_answer_names_its_question CHECK ((decision = 'answered') = (answers_id IS NOT NULL)),
  ADD CONSTRAINT review_asks_only_with_a_question CHECK (asked_of IS NULL OR decision = 'asked');
CREATE INDEX review_by_whom_it_asks ON review (programme_id, asked_of) WHERE asked_of IS NOT NULL;
CREATE UNIQUE INDEX review_question_is_answered_once ON review (programme_id, answers_id) WHERE answers_id IS NOT NULL;
