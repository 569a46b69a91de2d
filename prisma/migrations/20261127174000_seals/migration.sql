-- A programme's seal: places measured without a signal are closed on the phone to its public half.
-- The private half is locked with a key of the install before it gets here, and the app's login
-- cannot read it from the table: only the function below answers it, of one key of its own programme.
--
-- Locks: new table; exact_place briefly, for a column without a default. Undo by hand: drop the
-- function, the table and the column. Whatever is still sealed on phones cannot be opened then.

CREATE TABLE seal_key (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  public_key   bytea          NOT NULL,
  -- Nonce, private key and tag of AES-256-GCM.
  locked_key   bytea          NOT NULL,
  -- The newest is sealed to; older ones still open.
  made_at      timestamptz(3) NOT NULL DEFAULT present_time(),
  CONSTRAINT seal_key_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT seal_key_is_of_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT seal_key_is_a_point_of_the_curve CHECK (octet_length(public_key) = 65),
  CONSTRAINT seal_key_is_kept_locked CHECK (octet_length(locked_key) = 60)
);

CALL guard_rows_of('seal_key', 'INSERT');
CALL hide_from_partners('seal_key');
GRANT SELECT (programme_id, id, public_key, made_at) ON seal_key TO sprigline_app;

CREATE FUNCTION locked_seal_key(of_key uuid) RETURNS bytea
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT k.locked_key FROM public.seal_key k
  WHERE k.programme_id = public.this_programme() AND k.id = of_key AND public.this_partner() IS NULL;
END;
REVOKE ALL ON FUNCTION locked_seal_key(uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION locked_seal_key(uuid) TO sprigline_app;

-- The same sealed place sent again is known by it, also after somebody at the desk corrected the place.
ALTER TABLE exact_place ADD COLUMN sealed_hash bytea,
  ADD CONSTRAINT exact_place_names_its_seal_by_sha_256 CHECK (octet_length(sealed_hash) = 32);
