-- Programmes, partners and people: who works where, and what they may do.
--
-- Every row of a tenant carries programme_id, first in its primary key and in
-- each foreign key, so that no row can point into another programme.
-- Names of constraints are sentences that hold for every row; the API looks
-- refusals up by them, so renaming one is a change of contract.
--
-- Locks: new tables only. Undo by hand: drop the tables below.

CREATE DOMAIN words AS text CONSTRAINT words_are_not_blank CHECK (btrim(value) <> '');

CREATE TABLE programme (
  id                 uuid           NOT NULL,
  -- Short name in addresses, such as harrowdale.
  handle             text           NOT NULL,
  name               words          NOT NULL,
  -- Days are told in this zone, for example Europe/London.
  zone               words          NOT NULL,
  -- First month of a season, 1..12.
  season_starts_in   smallint       NOT NULL DEFAULT 10,
  -- What this programme calls rooted; printed with every rate.
  rooted_means       words          NOT NULL DEFAULT 'one root of 1 cm or more, seen',
  ready_means        words          NOT NULL DEFAULT 'roots hold the pot, shoot upright, no sign of disease',
  -- Entered as an example: shown with a banner, and may be reset.
  is_demo            boolean        NOT NULL DEFAULT false,
  created_at         timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT programme_pkey PRIMARY KEY (id),
  CONSTRAINT programme_handle_is_used_once UNIQUE (handle),
  CONSTRAINT programme_handle_is_short_and_plain CHECK (handle ~ '^[a-z0-9](?:[a-z0-9-]{0,38}[a-z0-9])?$'),
  CONSTRAINT programme_season_starts_in_a_month CHECK (season_starts_in BETWEEN 1 AND 12)
);

CREATE TABLE partner (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  name         words          NOT NULL,
  since        date           NOT NULL,
  until        date,
  created_at   timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT partner_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT partner_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT partner_name_is_used_once UNIQUE (programme_id, name),
  CONSTRAINT partner_ends_after_it_begins CHECK (until >= since)
);

CREATE TYPE role AS ENUM ('volunteer', 'coordinator', 'owner', 'partner');

-- Somebody who works. With user_id and role they have an account here; without, only a name.
CREATE TABLE person (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  name         words          NOT NULL,
  user_id      text,
  role         role,
  partner_id   uuid,
  -- The grant *see exact places*.
  sees_exact   boolean        NOT NULL DEFAULT false,
  joined_at    timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  -- Removed: the account works no longer here, from the very next request on.
  left_at      timestamptz(3),
  CONSTRAINT person_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT person_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT person_belongs_to_a_partner FOREIGN KEY (programme_id, partner_id) REFERENCES partner (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT person_with_an_account_has_a_role CHECK (user_id IS NULL OR role IS NOT NULL),
  CONSTRAINT person_of_a_partner_has_that_role CHECK ((role = 'partner') = (partner_id IS NOT NULL))
);
CREATE UNIQUE INDEX person_has_one_membership_an_account ON person (programme_id, user_id) WHERE user_id IS NOT NULL AND left_at IS NULL;
CREATE INDEX person_by_account ON person (user_id) WHERE left_at IS NULL;

CREATE TABLE invitation (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  token_hash   bytea          NOT NULL,
  role         role           NOT NULL,
  partner_id   uuid,
  person_id    uuid,
  for_name     words          NOT NULL,
  sees_exact   boolean        NOT NULL DEFAULT false,
  made_by      uuid           NOT NULL,
  made_at      timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  expires_at   timestamptz(3) NOT NULL,
  used_at      timestamptz(3),
  used_by      uuid,
  withdrawn_at timestamptz(3),
  CONSTRAINT invitation_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT invitation_token_is_used_once UNIQUE (token_hash),
  CONSTRAINT invitation_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT invitation_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT invitation_is_used_by_a_person FOREIGN KEY (programme_id, used_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT invitation_is_for_a_known_person FOREIGN KEY (programme_id, person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT invitation_is_for_a_known_partner FOREIGN KEY (programme_id, partner_id) REFERENCES partner (programme_id, id) ON DELETE RESTRICT
);

-- One link that makes the first owner of an empty install. Not of any programme.
CREATE TABLE setup_link (
  token_hash bytea          NOT NULL,
  made_at    timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  used_at    timestamptz(3),
  CONSTRAINT setup_link_pkey PRIMARY KEY (token_hash)
);

-- Who did what to records and rights. Only added to; ledger entries carry their own authors.
CREATE TABLE audit (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL DEFAULT gen_random_uuid(),
  at           timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  person_id    uuid,
  delivered_by words          NOT NULL,
  act          words          NOT NULL,
  subject_kind words          NOT NULL,
  subject_id   uuid,
  facts        jsonb          NOT NULL DEFAULT '{}',
  CONSTRAINT audit_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT audit_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT audit_names_a_person FOREIGN KEY (programme_id, person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);
CREATE INDEX audit_by_time ON audit (programme_id, at);
