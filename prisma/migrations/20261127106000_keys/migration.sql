-- Keys: what lets a program in, of the programme itself or of one partner.
--
-- Locks: new table only; `person` is only pointed at. Undo by hand: DROP FUNCTION key_calls(bytea, text); DROP TABLE key.

CREATE TABLE key (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  -- Under whose name its entries stand: a person with a name only, made with the key.
  person_id    uuid           NOT NULL,
  partner_id   uuid,
  name         words          NOT NULL,
  -- SHA-256. A key holds 178 random bits, so it needs no stretching.
  hash         bytea          NOT NULL,
  -- Its visible start, to know it again.
  start        words          NOT NULL,
  -- With spaces between, such as `batches:read entries:write`.
  scopes       words          NOT NULL,
  made_by      uuid           NOT NULL,
  made_at      timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  expires_at   timestamptz(3) NOT NULL,
  -- By the hour: a key at work is not to be written about at every request.
  last_used_at timestamptz(3),
  revoked_at   timestamptz(3),
  revoked_by   uuid,
  CONSTRAINT key_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT key_hash_is_used_once UNIQUE (hash),
  CONSTRAINT key_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT key_writes_as_a_person FOREIGN KEY (programme_id, person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT key_is_of_a_partner FOREIGN KEY (programme_id, partner_id) REFERENCES partner (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT key_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT key_is_revoked_by_a_person FOREIGN KEY (programme_id, revoked_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT key_hash_is_whole CHECK (octet_length(hash) = 32),
  CONSTRAINT key_scopes_are_words CHECK (scopes ~ '^[a-z-]+:(read|write)( [a-z-]+:(read|write))*$'),
  CONSTRAINT key_is_revoked_by_somebody CHECK ((revoked_at IS NULL) = (revoked_by IS NULL))
);
CREATE INDEX key_by_person ON key (programme_id, person_id);
CALL guard_rows_of('key', 'SELECT, INSERT, UPDATE');
CALL hide_from_partners('key');

-- Whose key this is, and what it may do in this programme. One look-up a request, so
-- what was revoked a moment ago does not work now. Whoever asks has the key itself.
CREATE FUNCTION key_calls(key_hash bytea, programme_handle text)
RETURNS TABLE (key_id uuid, state text, programme_id uuid, person_id uuid, partner_id uuid, scopes text, zone text)
LANGUAGE sql VOLATILE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  UPDATE public.key k SET last_used_at = date_trunc('hour', now())
  WHERE k.hash = key_hash AND k.revoked_at IS NULL AND (k.last_used_at IS NULL OR k.last_used_at < date_trunc('hour', now()));

  SELECT k.id, CASE
      WHEN k.revoked_at IS NOT NULL THEN 'revoked' WHEN k.expires_at <= now() THEN 'expired'
      WHEN q.until < (now() AT TIME ZONE home.zone)::date THEN 'ended' ELSE 'open' END,
    p.id, k.person_id, k.partner_id, k.scopes::text, p.zone::text
  FROM public.key k
  JOIN public.programme home ON home.id = k.programme_id
  LEFT JOIN public.programme p ON p.id = k.programme_id AND p.handle = programme_handle
  LEFT JOIN public.partner q ON q.programme_id = k.programme_id AND q.id = k.partner_id
  WHERE k.hash = key_hash;
END;

REVOKE ALL ON FUNCTION key_calls(bytea, text) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION key_calls(bytea, text) TO sprigline_app;
