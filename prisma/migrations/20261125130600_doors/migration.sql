-- Narrow doors for what happens before anybody is known: signing in, opening a link, checking a paper.
-- Each does one thing for the api's role and answers nothing else.

CREATE FUNCTION app.sign_in_row(wanted text) RETURNS TABLE (id uuid, password_hash text) LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT id, password_hash FROM staff WHERE lower(email) = lower(wanted) AND active $$;

CREATE FUNCTION app.staff_home(wanted uuid) RETURNS TABLE (practice boolean, centre boolean) LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT practice_id IS NOT NULL, centre_id IS NOT NULL FROM staff WHERE id = wanted AND active $$;

CREATE FUNCTION app.open_session(hash text, csrf_token text, session_kind text, staff uuid, link uuid, until timestamptz) RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = public AS
$$ INSERT INTO session (token_hash, csrf, kind, staff_id, link_id, expires_at) VALUES (hash, csrf_token, session_kind, staff, link, until) $$;

CREATE FUNCTION app.end_session(hash text) RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = public AS
$$ DELETE FROM session WHERE token_hash = hash OR expires_at < now() $$;

-- Who a session belongs to, in one read.
CREATE FUNCTION app.session_row(hash text) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT jsonb_build_object('kind', s.kind, 'csrf', s.csrf, 'staff', st.id, 'name', COALESCE(st.name, pe.name, ''), 'roles', COALESCE(to_jsonb(st.roles), '[]'),
    'practice', COALESCE(st.practice_id, l.practice_id), 'centre', COALESCE(st.centre_id, l.centre_id), 'scheme', st.scheme_id,
    'order', l.order_id, 'package', l.package_id, 'person', l.person_id,
    'home', COALESCE(p.name, c.name, sc.name), 'place', COALESCE(p.place, c.place, sc.country, ''), 'zone', COALESCE(p.zone, c.zone, sc.zone), 'demo', app.is_demo())
  FROM session s
  LEFT JOIN staff st ON st.id = s.staff_id AND st.active
  LEFT JOIN link l ON l.id = s.link_id AND l.revoked_at IS NULL AND l.expires_at > now()
  LEFT JOIN practice p ON p.id = COALESCE(st.practice_id, CASE WHEN l.kind = 'owner' THEN l.practice_id END)
  LEFT JOIN centre c ON c.id = COALESCE(st.centre_id, CASE WHEN l.kind = 'reader' THEN l.centre_id END)
  LEFT JOIN scheme sc ON sc.id = st.scheme_id
  LEFT JOIN person pe ON pe.id = l.person_id
  WHERE s.token_hash = hash AND s.expires_at > now() AND (st.id IS NOT NULL OR l.id IS NOT NULL)
$$;

CREATE FUNCTION app.link_row(hash text) RETURNS TABLE (id uuid, kind text, expires_at timestamptz) LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT id, kind, expires_at FROM link WHERE token_hash = hash AND revoked_at IS NULL AND expires_at > now() $$;

-- The public page of a certificate: the frozen snapshot, which has no owner in it.
CREATE FUNCTION app.certificate(wanted text) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT jsonb_build_object('snapshot', d.snapshot, 'state', d.state, 'replacedBy', r.serial)
  FROM document d LEFT JOIN document r ON r.id = d.replaced_by WHERE d.serial = wanted AND d.kind = 'certificate'
$$;

CREATE FUNCTION app.public_key() RETURNS text LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT public_key FROM scheme LIMIT 1 $$;

CREATE FUNCTION app.practice_directory() RETURNS TABLE (id uuid, name text, place text, email text) LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT id, name, place, email FROM practice ORDER BY name $$;

-- What an order is judged by at a practice that shares it: zone, letter policy, which texts are in force. Nothing personal.
CREATE FUNCTION app.practice_rules(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT COALESCE(jsonb_object_agg(p.id, jsonb_build_object('name', p.name, 'place', p.place, 'address', p.address, 'phone', p.phone, 'zone', p.zone, 'policy', p.policy, 'mayCertify', p.may_certify,
    'texts', (SELECT COALESCE(jsonb_object_agg(t.kind, t.version), '{}') FROM (SELECT DISTINCT ON (kind) kind, version FROM approved_text WHERE practice_id = p.id AND kind LIKE 'consent%' ORDER BY kind, approved_at DESC) t))), '{}')
  FROM order_access a JOIN practice p ON p.id = a.practice_id WHERE a.order_id = wanted AND (app.sees_order(wanted) OR current_setting('role', true) = 'app_system')
$$;

CREATE FUNCTION app.first_run_needed() RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT NOT EXISTS (SELECT 1 FROM scheme) $$;

-- Only ever the first scheme; the lock makes two first runs one.
CREATE FUNCTION app.first_run(scheme_row jsonb, practice_row jsonb, manager_row jsonb) RETURNS uuid LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE scheme_id uuid; practice_id uuid; manager uuid;
BEGIN
  LOCK TABLE scheme IN EXCLUSIVE MODE;
  IF EXISTS (SELECT 1 FROM scheme) THEN RETURN NULL; END IF;
  INSERT INTO scheme (name, country, currency, zone, signing_key, public_key)
    VALUES (scheme_row->>'name', scheme_row->>'country', scheme_row->>'currency', scheme_row->>'zone', scheme_row->>'signingKey', scheme_row->>'publicKey') RETURNING id INTO scheme_id;
  INSERT INTO practice (scheme_id, name, place, address, phone, email, zone, letters, policy, prices)
    VALUES (scheme_id, practice_row->>'name', practice_row->>'place', practice_row->>'address', practice_row->>'phone', practice_row->>'email', scheme_row->>'zone', practice_row->>'letters', practice_row->'policy', practice_row->'prices') RETURNING id INTO practice_id;
  INSERT INTO staff (scheme_id, practice_id, name, email, password_hash, roles)
    VALUES (scheme_id, practice_id, manager_row->>'name', manager_row->>'email', manager_row->>'passwordHash', ARRAY['manager', 'desk']) RETURNING id INTO manager;
  RETURN manager;
END $$;

-- The scheme lead's page: numbers and causes, no owner, no dog's name.
CREATE FUNCTION app.scheme_overview(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT jsonb_build_object(
    'overdue', COALESCE((SELECT jsonb_agg(jsonb_build_object('accession', o.accession, 'practice', p.name, 'centre', c.name, 'study', s.protocol, 'clock', s.clock, 'dueDay', s.due_day, 'cause', s.cause) ORDER BY s.due_day, o.accession)
      FROM study s JOIN orders o ON o.id = s.order_id JOIN practice p ON p.id = o.practice_id JOIN centre c ON c.id = s.centre_id
      WHERE p.scheme_id = wanted AND s.clock IS NOT NULL AND s.due_day < (now() AT TIME ZONE c.zone)::date), '[]'),
    'steps', COALESCE((SELECT jsonb_agg(jsonb_build_object('protocol', protocol, 'step', step, 'count', n) ORDER BY protocol, step)
      FROM (SELECT s.protocol, s.step, count(*)::int n FROM study s JOIN practice p ON p.id = s.practice_id WHERE p.scheme_id = wanted GROUP BY 1, 2) x), '[]'),
    'imagedNotSent', (SELECT count(*)::int FROM study s JOIN practice p ON p.id = s.practice_id WHERE p.scheme_id = wanted AND s.imaged_not_sent),
    'practices', COALESCE((SELECT jsonb_agg(jsonb_build_object('name', p.name, 'place', p.place,
        'open', (SELECT count(*)::int FROM orders o WHERE o.practice_id = p.id AND NOT o.closed),
        'accredited', COALESCE((SELECT jsonb_agg(jsonb_build_object('staff', st.name, 'protocol', a.protocol, 'until', a.valid_until) ORDER BY a.valid_until) FROM accreditation a JOIN staff st ON st.id = a.staff_id WHERE a.practice_id = p.id), '[]')) ORDER BY p.name)
      FROM practice p WHERE p.scheme_id = wanted), '[]'))
$$;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA app FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA app TO app_rls, app_system;
-- Asked for outside any practice, in one statement.
GRANT USAGE ON SCHEMA app TO cotyla_api;
GRANT EXECUTE ON FUNCTION app.sign_in_row, app.staff_home, app.open_session, app.end_session, app.session_row, app.link_row, app.certificate, app.public_key, app.first_run_needed, app.first_run, app.is_demo TO cotyla_api;
