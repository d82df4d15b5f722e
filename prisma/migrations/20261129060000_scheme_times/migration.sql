-- For the scheme lead: how long each study has waited since it was first sent, and every sending with whether its films
-- came back. No order, dog, owner or practice: a practice is a number that means nothing outside one answer.
CREATE FUNCTION app.scheme_times(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  WITH of_scheme AS (
    SELECT s.id, s.order_id, s.protocol, s.practice_id, s.open, sc.zone FROM study s JOIN practice p ON p.id = s.practice_id JOIN scheme sc ON sc.id = p.scheme_id WHERE p.scheme_id = wanted
  ), sent AS (
    SELECT s.id, s.order_id, s.protocol, s.practice_id, s.open, s.zone, f.at, f.body->>'send' AS send
    FROM of_scheme s JOIN fact f ON f.order_id = s.order_id AND f.type = 'packageSent' AND f.body->>'study' = s.id::text
  ), waited AS (
    SELECT DISTINCT ON (s.id) s.protocol, (s.at AT TIME ZONE s.zone)::date AS sent_on, a.at IS NOT NULL AS answered,
      (COALESCE(a.at, CASE WHEN s.open THEN now() ELSE (SELECT max(f.at) FROM fact f WHERE f.order_id = s.order_id) END) AT TIME ZONE s.zone)::date AS until
    FROM sent s LEFT JOIN LATERAL (
      SELECT min(f.at) AS at FROM fact f WHERE f.order_id = s.order_id AND f.type = 'resultArrived' AND f.body->>'study' = s.id::text
        AND NOT EXISTS (SELECT 1 FROM fact r WHERE r.order_id = s.order_id AND r.type = 'resultRefused' AND r.body->>'result' = f.body->>'result')
    ) a ON true ORDER BY s.id, s.at
  ), returned AS (
    SELECT to_char(s.at AT TIME ZONE s.zone, 'YYYY-MM') AS month, dense_rank() OVER (ORDER BY s.practice_id) AS practice,
      EXISTS (SELECT 1 FROM fact r WHERE r.order_id = s.order_id AND r.type = 'filmsRejected' AND r.body->>'send' = s.send) AS back
    FROM sent s
  )
  SELECT jsonb_build_object(
    'waited', COALESCE((SELECT jsonb_agg(jsonb_build_object('protocol', w.protocol, 'days', GREATEST(0, w.until - w.sent_on), 'answered', w.answered)) FROM waited w), '[]'),
    'sendings', COALESCE((SELECT jsonb_agg(jsonb_build_object('month', r.month, 'practice', r.practice, 'of', r.n, 'cases', r.back)) FROM (
      SELECT month, practice, count(*)::int AS n, (count(*) FILTER (WHERE back))::int AS back FROM returned GROUP BY 1, 2) r), '[]'))
$$;
REVOKE ALL ON FUNCTION app.scheme_times FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.scheme_times TO app_rls, app_system;
