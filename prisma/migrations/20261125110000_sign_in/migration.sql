-- Accounts and sessions.
--
-- The tables of schema auth belong to the sign-in library, which is why they keep
-- its names of columns. Only sprigline_auth may touch them; the application's login
-- reaches them through functions alone, which the next migration makes.
--
-- Locks: programme, person and invitation, briefly, for a trigger and a right.
-- Undo by hand: drop schema auth, reset_link and the trigger.

CREATE SCHEMA auth;

CREATE TABLE auth."user" (
  id              text        NOT NULL,
  name            text        NOT NULL,
  -- In small letters.
  email           text        NOT NULL,
  "emailVerified" boolean     NOT NULL DEFAULT false,
  image           text,
  "createdAt"     timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "updatedAt"     timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT user_pkey PRIMARY KEY (id),
  CONSTRAINT account_email_is_used_once UNIQUE (email)
);

CREATE TABLE auth.session (
  id          text        NOT NULL,
  "expiresAt" timestamptz NOT NULL,
  -- Opens nothing by itself: the cookie carries it signed with the install's secret.
  token       text        NOT NULL,
  "createdAt" timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "updatedAt" timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "ipAddress" text,
  "userAgent" text,
  "userId"    text        NOT NULL,
  CONSTRAINT session_pkey PRIMARY KEY (id),
  CONSTRAINT session_token_is_used_once UNIQUE (token),
  CONSTRAINT session_belongs_to_a_user FOREIGN KEY ("userId") REFERENCES auth."user" (id) ON DELETE CASCADE
);
CREATE INDEX session_by_user ON auth.session ("userId");

CREATE TABLE auth.account (
  id                      text        NOT NULL,
  "accountId"             text        NOT NULL,
  "providerId"            text        NOT NULL,
  "userId"                text        NOT NULL,
  "accessToken"           text,
  "refreshToken"          text,
  "idToken"               text,
  "accessTokenExpiresAt"  timestamptz,
  "refreshTokenExpiresAt" timestamptz,
  scope                   text,
  -- Argon2id, with its parameters in it.
  password                text,
  "createdAt"             timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "updatedAt"             timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT account_pkey PRIMARY KEY (id),
  CONSTRAINT account_of_a_provider_is_used_once UNIQUE ("providerId", "accountId"),
  CONSTRAINT account_belongs_to_a_user FOREIGN KEY ("userId") REFERENCES auth."user" (id) ON DELETE CASCADE
);
CREATE INDEX account_by_user ON auth.account ("userId");

CREATE TABLE auth.verification (
  id          text        NOT NULL,
  identifier  text        NOT NULL,
  value       text        NOT NULL,
  "expiresAt" timestamptz NOT NULL,
  "createdAt" timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  "updatedAt" timestamptz NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT verification_pkey PRIMARY KEY (id)
);
CREATE INDEX verification_by_identifier ON auth.verification (identifier);

-- Wrong passwords, counted for an account and an address together: whoever guesses
-- from one address never locks out the person who signs in from another.
CREATE TABLE auth.wrong_try (
  -- SHA-256 of both: the table tells nobody who tried.
  key_hash bytea       NOT NULL,
  tries    integer     NOT NULL,
  since    timestamptz NOT NULL,
  CONSTRAINT wrong_try_pkey PRIMARY KEY (key_hash),
  CONSTRAINT wrong_try_is_counted_from_one CHECK (tries > 0)
);
CREATE INDEX wrong_try_by_time ON auth.wrong_try (since);

GRANT USAGE ON SCHEMA auth TO sprigline_auth, sprigline_keeper;
GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA auth TO sprigline_auth;
GRANT SELECT ON ALL TABLES IN SCHEMA auth TO sprigline_keeper;

-- One link that lets a person choose a new password.
CREATE TABLE reset_link (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  person_id    uuid           NOT NULL,
  token_hash   bytea          NOT NULL,
  -- Nobody: made on the machine itself, by whoever runs it.
  made_by      uuid,
  made_at      timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  expires_at   timestamptz(3) NOT NULL,
  used_at      timestamptz(3),
  CONSTRAINT reset_link_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT reset_link_token_is_used_once UNIQUE (token_hash),
  CONSTRAINT reset_link_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT reset_link_is_for_a_person FOREIGN KEY (programme_id, person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT reset_link_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);
CALL guard_rows_of('reset_link', 'SELECT, INSERT');
CALL hide_from_partners('reset_link');

-- People leave, invitations are withdrawn; neither ever disappears.
REVOKE DELETE ON person, invitation FROM sprigline_app;

-- A programme without an owner could be governed by nobody ever again.
CREATE FUNCTION refuse_to_leave_without_an_owner() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  -- Two owners who remove each other at once take turns here, and the second stays.
  PERFORM FROM programme WHERE id = OLD.programme_id FOR UPDATE;
  IF NOT EXISTS (
    SELECT FROM person WHERE programme_id = OLD.programme_id AND role = 'owner' AND user_id IS NOT NULL AND left_at IS NULL
  ) THEN
    RAISE EXCEPTION 'a programme keeps at least one owner'
      USING ERRCODE = 'restrict_violation', CONSTRAINT = 'programme_keeps_an_owner';
  END IF;
  RETURN NULL;
END
$$;
CREATE TRIGGER programme_keeps_an_owner
  AFTER UPDATE OF role, user_id, left_at ON person FOR EACH ROW
  WHEN (OLD.role = 'owner' AND OLD.user_id IS NOT NULL AND OLD.left_at IS NULL)
  EXECUTE FUNCTION refuse_to_leave_without_an_owner();
