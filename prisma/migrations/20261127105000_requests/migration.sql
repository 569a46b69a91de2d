-- Who asks for plants, what is set aside for them, and what went.
--
-- Locks: new tables only. Undo by hand: drop the tables below.

CREATE TABLE request (
  programme_id   uuid    NOT NULL,
  id             uuid    NOT NULL,
  -- A partner of the programme, or somebody outside in words.
  partner_id     uuid,
  outside        text,
  taxon_id       uuid    NOT NULL,
  stage          stage   NOT NULL,
  plants         integer NOT NULL,
  -- At most so many of one donor tree; empty: no limit.
  most_per_donor integer,
  asked_on       date    NOT NULL,
  wanted_on      date,
  -- A site or plot of the programme, where they will be planted; empty: they are handed over.
  place_id       uuid,
  -- Given back for what was collected under this permission.
  permission_id  uuid,
  state          text    NOT NULL DEFAULT 'asked',
  gone_on        date,
  note           text,
  CONSTRAINT request_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT request_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT request_is_made_by_a_partner FOREIGN KEY (programme_id, partner_id) REFERENCES partner (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT request_is_for_a_taxon FOREIGN KEY (programme_id, taxon_id) REFERENCES taxon (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT request_goes_to_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT request_gives_back_for_a_permission FOREIGN KEY (programme_id, permission_id) REFERENCES permission (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT request_is_made_by_somebody CHECK (num_nonnulls(partner_id, outside) = 1),
  CONSTRAINT request_is_for_plants CHECK (plants > 0),
  CONSTRAINT request_limit_is_positive CHECK (most_per_donor > 0),
  CONSTRAINT request_is_not_for_planted_trees CHECK (stage <> 'planted'),
  CONSTRAINT request_state_is_known CHECK (state IN ('asked', 'promised', 'packed', 'gone', 'withdrawn')),
  CONSTRAINT request_has_a_day_once_it_is_gone CHECK ((state = 'gone') = (gone_on IS NOT NULL))
);
CREATE INDEX request_by_day ON request (programme_id, asked_on, id);
CREATE INDEX request_by_permission ON request (programme_id, permission_id) WHERE permission_id IS NOT NULL;

-- The stands that the plants are to come from; none: any.
CREATE TABLE request_stand (
  programme_id uuid NOT NULL,
  request_id   uuid NOT NULL,
  stand_id     uuid NOT NULL,
  CONSTRAINT request_stand_pkey PRIMARY KEY (programme_id, request_id, stand_id),
  CONSTRAINT request_stand_is_of_a_request FOREIGN KEY (programme_id, request_id) REFERENCES request (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT request_stand_is_a_stand FOREIGN KEY (programme_id, stand_id) REFERENCES stand (programme_id, id) ON DELETE RESTRICT
);

-- Plants set aside. When plants die the row stays as it was, and the shortfall is shown.
CREATE TABLE reservation (
  programme_id uuid    NOT NULL,
  request_id   uuid    NOT NULL,
  batch_id     uuid    NOT NULL,
  n            integer NOT NULL,
  CONSTRAINT reservation_pkey PRIMARY KEY (programme_id, request_id, batch_id),
  CONSTRAINT reservation_is_for_a_request FOREIGN KEY (programme_id, request_id) REFERENCES request (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT reservation_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT reservation_is_of_plants CHECK (n > 0)
);
CREATE INDEX reservation_by_batch ON reservation (programme_id, batch_id);

-- Which entries a request was despatched by; how many plants that were is for the books to say.
CREATE TABLE despatch (
  programme_id uuid NOT NULL,
  request_id   uuid NOT NULL,
  entry_id     uuid NOT NULL,
  batch_id     uuid NOT NULL,
  CONSTRAINT despatch_pkey PRIMARY KEY (programme_id, request_id, entry_id),
  CONSTRAINT despatch_entry_is_of_one_request UNIQUE (programme_id, entry_id),
  CONSTRAINT despatch_is_of_a_request FOREIGN KEY (programme_id, request_id) REFERENCES request (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT despatch_is_by_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT despatch_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT
);

CALL guard_rows_of('request');
CALL guard_rows_of('request_stand');
CALL guard_rows_of('reservation');
CALL guard_rows_of('despatch', 'SELECT, INSERT');
CALL hide_from_partners('request');
CALL hide_from_partners('request_stand');
CALL hide_from_partners('reservation');
CALL hide_from_partners('despatch');
CREATE TRIGGER despatch_is_never_rewritten BEFORE UPDATE OR DELETE ON despatch FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
