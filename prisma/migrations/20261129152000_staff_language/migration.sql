-- Everybody who signs in may choose the language of their pages.
ALTER TABLE "staff" ADD COLUMN "language" TEXT;

CREATE OR REPLACE FUNCTION app.session_row(hash text) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT jsonb_build_object('kind', s.kind, 'csrf', s.csrf, 'staff', st.id, 'name', COALESCE(st.name, pe.name, ''), 'roles', COALESCE(to_jsonb(st.roles), '[]'),
    'practice', COALESCE(st.practice_id, l.practice_id), 'centre', COALESCE(st.centre_id, l.centre_id), 'scheme', st.scheme_id,
    'order', l.order_id, 'package', l.package_id, 'person', l.person_id, 'language', COALESCE(st.language, pe.language),
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

CREATE FUNCTION app.choose_language(who uuid, code text) RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = public AS
$$ UPDATE staff SET language = code WHERE id = who $$;
GRANT EXECUTE ON FUNCTION app.choose_language TO cotyla_api;
