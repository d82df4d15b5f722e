-- What a paper is called: a sentence and what stands in its places, said when somebody looks. Papers from before have a name alone.
ALTER TABLE "document" ADD COLUMN "named" JSONB;

-- The language that most of a practice's people have chosen, of those who have; for a letter to it. Names nobody.
CREATE FUNCTION app.practice_language(wanted uuid) RETURNS text LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  WITH chosen AS (SELECT language FROM staff WHERE practice_id = wanted AND active AND language IS NOT NULL)
  SELECT language FROM chosen GROUP BY language HAVING count(*) * 2 > (SELECT count(*) FROM chosen)
$$;
REVOKE ALL ON FUNCTION app.practice_language FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.practice_language TO app_rls, app_system;
