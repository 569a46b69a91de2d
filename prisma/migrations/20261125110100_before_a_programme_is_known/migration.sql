-- The few questions that are asked before a programme is known.
--
-- Each function runs with its owner's rights, does one thing, and answers nothing
-- without a secret that only the caller has. The owner may be an ordinary role:
-- the policies owner_sees_all let it see the rows.
--
-- Locks: none. Undo by hand: drop the functions.

-- Who holds this session, and what they may do in this programme. One look-up a
-- request, so what was revoked a moment ago does not work now. A session lives for
-- 14 days after it was last used and 90 days at most; "last used" is kept by the hour.
CREATE FUNCTION who_calls(session_token text, programme_handle text)
RETURNS TABLE (user_id text, session_id text, programme_id uuid, person_id uuid, role role, partner_id uuid, sees_exact boolean, zone text)
LANGUAGE sql VOLATILE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  UPDATE auth.session s
  SET "updatedAt" = now(), "expiresAt" = least(s."createdAt" + interval '90 days', now() + interval '14 days')
  WHERE s.token = session_token AND s."expiresAt" > now() AND s."updatedAt" < now() - interval '1 hour';

  SELECT s."userId", s.id, m.programme_id, m.id, m.role, m.partner_id,
    m.role IN ('coordinator', 'owner') OR (m.sees_exact AND m.role = 'volunteer'), p.zone::text
  FROM auth.session s
  LEFT JOIN public.programme p ON p.handle = programme_handle
  LEFT JOIN public.person m ON m.programme_id = p.id AND m.user_id = s."userId" AND m.left_at IS NULL
    AND NOT EXISTS (
      SELECT FROM public.partner q
      WHERE q.programme_id = m.programme_id AND q.id = m.partner_id AND q.until < (now() AT TIME ZONE p.zone)::date)
  WHERE s.token = session_token AND s."expiresAt" > now();
END;

-- The holder of a session, as they called themselves.
CREATE FUNCTION my_account(session_id text) RETURNS TABLE (name text, email text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT u.name, u.email FROM auth.session s JOIN auth."user" u ON u.id = s."userId"
  WHERE s.id = session_id AND s."expiresAt" > now();
END;

-- The programmes in which the holder of a session works.
CREATE FUNCTION my_programmes(session_id text)
RETURNS TABLE (programme_id uuid, handle text, name text, is_demo boolean, person_id uuid, role role)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT p.id, p.handle, p.name::text, p.is_demo, m.id, m.role
  FROM auth.session s
  JOIN public.person m ON m.user_id = s."userId" AND m.left_at IS NULL
  JOIN public.programme p ON p.id = m.programme_id
  LEFT JOIN public.partner q ON q.programme_id = m.programme_id AND q.id = m.partner_id
  WHERE s.id = session_id AND s."expiresAt" > now() AND (q.until IS NULL OR q.until >= (now() AT TIME ZONE p.zone)::date)
  ORDER BY p.name, p.id;
END;

-- Whether somebody may hand out what opens another's account. An account works in
-- every programme that it is a member of, so they must answer for it in all of them.
CREATE FUNCTION answers_for(maker text, subject text) RETURNS boolean
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT NOT EXISTS (
    SELECT FROM public.person theirs
    WHERE theirs.user_id = subject AND theirs.left_at IS NULL AND NOT EXISTS (
      SELECT FROM public.person mine
      WHERE mine.programme_id = theirs.programme_id AND mine.user_id = maker AND mine.left_at IS NULL
        AND (mine.role = 'owner' OR (mine.role = 'coordinator' AND theirs.role IN ('volunteer', 'partner')))));
END;

-- An invitation that still opens: not used, withdrawn or expired, and made by somebody who may still make it.
CREATE FUNCTION living_invitation(hash bytea) RETURNS TABLE (programme_id uuid, id uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT i.programme_id, i.id FROM public.invitation i
  JOIN public.person maker ON maker.programme_id = i.programme_id AND maker.id = i.made_by
  WHERE i.token_hash = hash AND i.used_at IS NULL AND i.withdrawn_at IS NULL AND i.expires_at > now()
    AND maker.left_at IS NULL
    AND (maker.role = 'owner' OR (maker.role = 'coordinator' AND i.role IN ('volunteer', 'partner')));
END;

-- A reset link that still opens.
CREATE FUNCTION living_reset_link(hash bytea) RETURNS TABLE (programme_id uuid, id uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT r.programme_id, r.id FROM public.reset_link r
  JOIN public.person p ON p.programme_id = r.programme_id AND p.id = r.person_id AND p.left_at IS NULL
  LEFT JOIN public.person maker ON maker.programme_id = r.programme_id AND maker.id = r.made_by
  WHERE r.token_hash = hash AND r.used_at IS NULL AND r.expires_at > now()
    AND (r.made_by IS NULL OR public.answers_for(maker.user_id, p.user_id));
END;

-- A set-up link opens for three days, and only while there is no programme at all.
CREATE FUNCTION living_setup_link(hash bytea) RETURNS boolean
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT EXISTS (
    SELECT FROM public.setup_link l WHERE l.token_hash = hash AND l.used_at IS NULL AND l.made_at > now() - interval '3 days')
    AND NOT EXISTS (SELECT FROM public.programme);
END;

-- Makes the one set-up link of an empty install; answers no when a programme is there.
CREATE FUNCTION offer_setup_link(hash bytea) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF EXISTS (SELECT FROM public.programme) THEN RETURN false; END IF;
  DELETE FROM public.setup_link WHERE used_at IS NULL;
  INSERT INTO public.setup_link (token_hash) VALUES (hash);
  RETURN true;
END
$$;

-- Uses the set-up link up. Of two at once the second waits, and finds it used.
CREATE FUNCTION use_setup_link(hash bytea) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('sprigline.setup', 0));
  UPDATE public.setup_link SET used_at = now() WHERE token_hash = hash AND public.living_setup_link(hash);
  RETURN FOUND;
END
$$;

-- Opens an account. There is no other way to one: it takes a living set-up link or invitation.
CREATE FUNCTION open_account(hash bytea, user_id text, user_name text, user_email text, password_hash text) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  -- Two who hold the set-up link at once take turns: the second finds it closed.
  IF public.living_setup_link(hash) THEN PERFORM pg_advisory_xact_lock(hashtextextended('sprigline.setup', 0)); END IF;
  IF NOT (public.living_setup_link(hash) OR EXISTS (SELECT FROM public.living_invitation(hash))) THEN
    RAISE EXCEPTION 'an account needs a link that still opens'
      USING ERRCODE = 'restrict_violation', CONSTRAINT = 'account_needs_a_living_link';
  END IF;
  INSERT INTO auth."user" (id, name, email) VALUES (user_id, user_name, user_email);
  INSERT INTO auth.account (id, "accountId", "providerId", "userId", password)
  VALUES (user_id, user_id, 'credential', user_id, password_hash);
END
$$;

-- Sets a new password by a living link, uses the link up, and ends every session of the account.
CREATE FUNCTION use_reset_link(hash bytea, password_hash text) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  account_of text;
BEGIN
  UPDATE public.reset_link r SET used_at = now()
  FROM public.person p
  WHERE r.token_hash = hash AND r.used_at IS NULL AND EXISTS (SELECT FROM public.living_reset_link(hash))
    AND p.programme_id = r.programme_id AND p.id = r.person_id
  RETURNING p.user_id INTO account_of;
  IF account_of IS NULL THEN RETURN false; END IF;
  UPDATE auth.account SET password = password_hash, "updatedAt" = now() WHERE "userId" = account_of AND "providerId" = 'credential';
  DELETE FROM auth.session WHERE "userId" = account_of;
  -- What was handed out before opens nothing any more.
  UPDATE public.reset_link r SET used_at = now() FROM public.person p
  WHERE p.programme_id = r.programme_id AND p.id = r.person_id AND p.user_id = account_of AND r.used_at IS NULL;
  RETURN true;
END
$$;

-- A reset link made on the machine itself, for an owner whom nobody else can let in.
CREATE FUNCTION offer_reset_link(account_email text, link_id uuid, hash bytea) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  INSERT INTO public.reset_link (programme_id, id, person_id, token_hash, expires_at)
  SELECT p.programme_id, link_id, p.id, hash, now() + interval '1 day'
  FROM auth."user" u JOIN public.person p ON p.user_id = u.id AND p.left_at IS NULL
  WHERE u.email = account_email ORDER BY p.joined_at LIMIT 1;
  RETURN FOUND;
END
$$;

DO $$
DECLARE
  asked regprocedure;
BEGIN
  FOREACH asked IN ARRAY ARRAY[
    'who_calls(text,text)', 'my_account(text)', 'my_programmes(text)', 'answers_for(text,text)', 'living_invitation(bytea)',
    'living_reset_link(bytea)', 'living_setup_link(bytea)', 'use_setup_link(bytea)', 'open_account(bytea,text,text,text,text)',
    'use_reset_link(bytea,text)', 'offer_setup_link(bytea)', 'offer_reset_link(text,uuid,bytea)']::regprocedure[]
  LOOP
    EXECUTE format('REVOKE ALL ON FUNCTION %s FROM PUBLIC', asked);
    EXECUTE format('GRANT EXECUTE ON FUNCTION %s TO %s', asked,
      CASE WHEN asked::text LIKE 'offer%' THEN 'sprigline_keeper' ELSE 'sprigline_app' END);
  END LOOP;
END
$$;
