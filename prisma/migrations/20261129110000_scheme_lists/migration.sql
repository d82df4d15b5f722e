-- For the scheme lead: the studies behind a number of the scheme's page. Order number, practice and centre; no owner and no dog's name.
CREATE FUNCTION app.scheme_studies(wanted uuid, of_protocol text, at_step text, only_unsent boolean, skip int, take int) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT COALESCE(jsonb_agg(jsonb_build_object('accession', x.accession, 'protocol', x.protocol, 'step', x.step, 'practice', x.practice, 'centre', x.centre, 'since', x.since, 'dueDay', x.due_day) ORDER BY x.since NULLS LAST, x.accession, x.protocol), '[]')
  FROM (
    SELECT o.accession, s.protocol, s.step, p.name AS practice, c.name AS centre, (s.since AT TIME ZONE sc.zone)::date AS since, s.due_day
    FROM study s JOIN orders o ON o.id = s.order_id JOIN practice p ON p.id = s.practice_id JOIN centre c ON c.id = s.centre_id JOIN scheme sc ON sc.id = p.scheme_id
    WHERE p.scheme_id = wanted AND (of_protocol IS NULL OR s.protocol = of_protocol) AND (at_step IS NULL OR s.step = at_step) AND (NOT only_unsent OR s.imaged_not_sent)
    ORDER BY s.since NULLS LAST, o.accession, s.protocol OFFSET skip LIMIT take
  ) x
$$;

-- Films of the last three years, and those of them that were to be taken again, by study: counts over the whole scheme.
CREATE FUNCTION app.scheme_retakes(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  WITH films AS (
    SELECT f.order_id, f.body->>'exposure' AS exposure, f.body->'serves' AS serves FROM fact f JOIN orders o ON o.id = f.order_id JOIN practice p ON p.id = o.practice_id
    WHERE p.scheme_id = wanted AND f.type = 'exposureTaken' AND f.at > now() - interval '3 years'
  ), judged AS (
    SELECT DISTINCT ON (x.order_id, x.exposure, s.id) s.protocol, v.body->>'verdict' AS verdict, v.body->'reasons' AS reasons
    FROM films x JOIN study s ON s.order_id = x.order_id AND x.serves ? s.id::text
    JOIN fact v ON v.order_id = x.order_id AND v.type = 'verdictGiven' AND v.body->>'exposure' = x.exposure AND v.body->>'study' = s.id::text
    ORDER BY x.order_id, x.exposure, s.id, v.rec DESC
  )
  SELECT COALESCE(jsonb_agg(jsonb_build_object('protocol', j.protocol, 'films', j.films, 'again', j.again, 'reasons', j.reasons) ORDER BY j.protocol), '[]')
  FROM (
    SELECT protocol, count(*)::int AS films, (count(*) FILTER (WHERE verdict = 'retake'))::int AS again,
      (SELECT COALESCE(jsonb_agg(jsonb_build_object('reason', r.reason, 'films', r.n) ORDER BY r.n DESC, r.reason), '[]') FROM (
        SELECT reason, count(*)::int AS n FROM judged k, jsonb_array_elements_text(k.reasons) reason WHERE k.protocol = judged.protocol AND k.verdict = 'retake' GROUP BY 1) r) AS reasons
    FROM judged GROUP BY protocol
  ) j
$$;

REVOKE ALL ON FUNCTION app.scheme_studies, app.scheme_retakes FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.scheme_studies, app.scheme_retakes TO app_rls, app_system;
