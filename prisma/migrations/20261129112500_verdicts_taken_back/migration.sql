-- A verdict that was taken back is none: its film counts again once somebody judges it.
CREATE OR REPLACE FUNCTION app.scheme_retakes(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
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
    FROM judged WHERE verdict <> 'undecided' GROUP BY protocol
  ) j
$$;
