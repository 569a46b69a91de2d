-- What follows from the entries. Written in the same transaction as the entry,
-- by the replay; can be thrown away and rebuilt.
--
-- Locks: new tables only. Undo by hand: drop the tables below.

-- The books of a batch now.
CREATE TABLE batch_state (
  programme_id uuid    NOT NULL,
  batch_id     uuid    NOT NULL,
  balance      integer NOT NULL,
  place_id     uuid    NOT NULL,
  rooted_now   integer,
  rooted_ever  integer NOT NULL DEFAULT 0,
  rooted_look  look,
  rooted_on    date,
  last_seen_on date,
  last_look    look,
  not_found    integer NOT NULL DEFAULT 0,
  held         boolean NOT NULL DEFAULT false,
  unconfirmed  boolean NOT NULL DEFAULT false,
  called_on    date,
  CONSTRAINT batch_state_pkey PRIMARY KEY (programme_id, batch_id),
  CONSTRAINT batch_state_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_state_is_at_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_balance_is_never_below_zero CHECK (balance >= 0),
  CONSTRAINT batch_roots_are_within_the_balance CHECK (rooted_now BETWEEN 0 AND balance),
  CONSTRAINT batch_missed_trees_are_within_the_balance CHECK (not_found BETWEEN 0 AND balance)
);
CREATE INDEX batch_state_by_place ON batch_state (programme_id, place_id) WHERE balance > 0;

CREATE TABLE movement (
  programme_id uuid     NOT NULL,
  batch_id     uuid     NOT NULL,
  -- Order in the batch's books, from 0.
  seq          integer  NOT NULL,
  entry_id     uuid     NOT NULL,
  day          date     NOT NULL,
  effect       text     NOT NULL,
  n            integer  NOT NULL,
  cause        text,
  to_stage     stage,
  undoes_id    uuid,
  -- A loss lies in (last_seen, day].
  last_seen    date,
  CONSTRAINT movement_pkey PRIMARY KEY (programme_id, batch_id, seq),
  CONSTRAINT movement_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT movement_is_booked_by_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT movement_moves_at_least_one_plant CHECK (n > 0),
  CONSTRAINT movement_effect_is_known CHECK (effect IN (
    'stuck', 'received', 'wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn', 'found', 'takenBack',
    'died', 'unaccounted', 'notRooted', 'thrownOut', 'wentOn', 'splitOut', 'restuckOut', 'mixedOut', 'identifiedOut',
    'givenOut', 'givenAcross'))
);
CREATE INDEX movement_by_entry ON movement (programme_id, entry_id);

CREATE TABLE stay (
  programme_id uuid    NOT NULL,
  batch_id     uuid    NOT NULL,
  seq          integer NOT NULL,
  place_id     uuid    NOT NULL,
  from_day     date    NOT NULL,
  -- Empty while it still stands there.
  to_day       date,
  entry_id     uuid    NOT NULL,
  CONSTRAINT stay_pkey PRIMARY KEY (programme_id, batch_id, seq),
  CONSTRAINT stay_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT stay_is_at_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT stay_ends_after_it_begins CHECK (to_day >= from_day)
);
CREATE INDEX stay_by_place ON stay (programme_id, place_id, from_day);

CREATE TABLE flag (
  programme_id uuid NOT NULL,
  batch_id     uuid NOT NULL,
  entry_id     uuid NOT NULL,
  code         text NOT NULL,
  day          date NOT NULL,
  n            integer,
  CONSTRAINT flag_pkey PRIMARY KEY (programme_id, batch_id, entry_id, code),
  CONSTRAINT flag_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT flag_is_raised_at_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT flag_code_is_known CHECK (code IN (
    'order-unknown', 'called-by-count', 'took-more', 'found-by-count', 'found-told', 'two-readings',
    'dead-beyond-shortfall', 'rooted-fell', 'opening-withdrawn', 'rival-correction', 'day-in-future', 'clock-unsure',
    'held-moved', 'not-found-twice', 'author-unverified', 'waiting'))
);

-- What a coordinator decided about a flag. The flag may be rebuilt; the decision stays.
CREATE TABLE review (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  entry_id     uuid           NOT NULL,
  batch_id     uuid,
  code         text           NOT NULL,
  decision     text           NOT NULL,
  assigned_to  uuid,
  note         text,
  by_person_id uuid           NOT NULL,
  at           timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT review_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT review_is_of_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT review_is_by_a_person FOREIGN KEY (programme_id, by_person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT review_is_assigned_to_a_person FOREIGN KEY (programme_id, assigned_to) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT review_decision_is_known CHECK (decision IN ('accepted', 'mended', 'asked', 'assigned'))
);
CREATE INDEX review_by_entry ON review (programme_id, entry_id);

-- Entries that name a batch or an entry that has not arrived yet.
CREATE TABLE waiting_entry (
  programme_id uuid NOT NULL,
  entry_id     uuid NOT NULL,
  waits_for_id uuid NOT NULL,
  CONSTRAINT waiting_entry_pkey PRIMARY KEY (programme_id, waits_for_id, entry_id),
  CONSTRAINT waiting_entry_is_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT
);

-- Per sticking and stage, what came in and what became of it. Splits and moves never count.
CREATE TABLE tally (
  programme_id uuid    NOT NULL,
  sticking_id  uuid    NOT NULL,
  stage        stage   NOT NULL,
  came_in      integer NOT NULL,
  gone_on      integer NOT NULL,
  died         integer NOT NULL,
  unaccounted  integer NOT NULL,
  not_rooted   integer NOT NULL,
  thrown_out   integer NOT NULL,
  given_out    integer NOT NULL,
  restuck      integer NOT NULL,
  mixed        integer NOT NULL DEFAULT 0,
  -- Came by mixing or identifying: in another row they have come in already.
  mixed_in     integer NOT NULL DEFAULT 0,
  here         integer NOT NULL,
  -- Of those here, planted trees that the last check missed.
  not_found    integer NOT NULL DEFAULT 0,
  -- Plants that died, by the cause as the eye sees it.
  died_of      jsonb   NOT NULL DEFAULT '{}',
  CONSTRAINT tally_pkey PRIMARY KEY (programme_id, sticking_id, stage),
  CONSTRAINT tally_is_of_a_sticking FOREIGN KEY (programme_id, sticking_id) REFERENCES sticking (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT tally_closes CHECK (came_in + mixed_in = gone_on + died + unaccounted + not_rooted + thrown_out + given_out + restuck + mixed + here)
);

-- Which partners may see a batch, and why.
CREATE TABLE batch_partner (
  programme_id uuid NOT NULL,
  batch_id     uuid NOT NULL,
  partner_id   uuid NOT NULL,
  relation     text NOT NULL,
  CONSTRAINT batch_partner_pkey PRIMARY KEY (programme_id, batch_id, partner_id, relation),
  CONSTRAINT batch_partner_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_partner_is_a_partner FOREIGN KEY (programme_id, partner_id) REFERENCES partner (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_partner_relation_is_known CHECK (relation IN ('stand', 'site', 'hands'))
);
