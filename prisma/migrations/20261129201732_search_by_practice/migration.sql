-- Names are looked up within one practice: its share of an index over every practice's names would grow with all of them.
CREATE EXTENSION IF NOT EXISTS btree_gin;

DROP INDEX "dog_name_trgm";
DROP INDEX "person_name_trgm";
CREATE INDEX "dog_call_name_trgm" ON "dog" USING GIN ("practice_id" uuid_ops, "call_name" gin_trgm_ops);
CREATE INDEX "dog_name_trgm" ON "dog_name" USING GIN ("practice_id" uuid_ops, "name" gin_trgm_ops);
CREATE INDEX "person_name_trgm" ON "person" USING GIN ("practice_id" uuid_ops, "name" gin_trgm_ops);

-- How near a name is to what was typed: over 1 when it holds it, else by shared runs of three letters.
CREATE FUNCTION app.likeness(name text, typed text) RETURNS float8 LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT CASE WHEN strpos(lower(name), lower(typed)) > 0 THEN 1 + similarity(name, typed) ELSE word_similarity(typed, name) END $$;

-- Dogs of this practice, and of orders that were referred to it, by what was typed: all of them for an empty text, else by
-- name and call name, number, and the owner's name or phone, each hit with its score; `digits` is what was typed when it
-- is a number. A policy may only be asked before an index of names, never after it, so a statement under the policies
-- would have to read every row of the practice. This function keeps to the same practice and the same dogs, and tells ids
-- alone: what is shown of a dog is read under the policies.
-- The threshold is the one from which on a name is offered (libs/register/search/likeness-sql.ts).
CREATE FUNCTION app.dog_hits(typed text, digits text) RETURNS TABLE (dog uuid, score float8) LANGUAGE plpgsql STABLE SECURITY DEFINER ROWS 100
  SET search_path = public SET pg_trgm.word_similarity_threshold = 0.35 SET max_parallel_workers_per_gather = 0 AS $$
DECLARE
  own uuid := app.practice();
  shared uuid[] := ARRAY(SELECT o.dog_id FROM order_access a JOIN orders o ON o.id = a.order_id WHERE a.practice_id = own AND a.why <> 'home');
  holders uuid[] := ARRAY(SELECT r.person_id FROM dog_role r WHERE r.dog_id = ANY (shared) AND r.role IN ('owner', 'coOwner') AND r.valid_until IS NULL);
  holds text := '%' || regexp_replace(typed, '([\\%_])', '\\\1', 'g') || '%';
BEGIN
  IF typed = '' THEN
    RETURN QUERY SELECT d.id, 1::float8 FROM dog d WHERE d.practice_id = own OR d.id = ANY (shared);
    RETURN;
  END IF;
  RETURN QUERY SELECT d.id, 3::float8 FROM dog d WHERE (d.practice_id = own OR d.id = ANY (shared))
    AND d.id IN (SELECT s.id FROM dog s WHERE s.animal_id = upper(typed) UNION ALL SELECT m.kept_id FROM dog_merge m WHERE m.animal_id = upper(typed));
  RETURN QUERY SELECT i.dog_id, 2::float8 FROM dog_identifier i
    WHERE (i.practice_id = own OR i.dog_id = ANY (shared)) AND strpos(i.value, coalesce(digits, upper(typed))) > 0;
  IF digits IS NULL THEN
    RETURN QUERY SELECT d.id, app.likeness(d.call_name, typed) FROM dog d
      WHERE d.practice_id = own AND (typed <% d.call_name OR d.call_name ILIKE holds) OR d.id = ANY (shared);
    RETURN QUERY SELECT n.dog_id, app.likeness(n.name, typed) FROM dog_name n
      WHERE n.practice_id = own AND (typed <% n.name OR n.name ILIKE holds) OR n.dog_id = ANY (shared);
    RETURN QUERY SELECT r.dog_id, 0.9 * app.likeness(p.name, typed) FROM person p JOIN dog_role r ON r.person_id = p.id
      WHERE (p.practice_id = own AND (typed <% p.name OR p.name ILIKE holds) OR p.id = ANY (holders))
        AND (r.practice_id = own OR r.dog_id = ANY (shared)) AND r.role IN ('owner', 'coOwner') AND r.valid_until IS NULL;
  ELSE
    RETURN QUERY SELECT r.dog_id, 2::float8 FROM person p JOIN dog_role r ON r.person_id = p.id
      WHERE (p.practice_id = own OR p.id = ANY (holders)) AND strpos(regexp_replace(p.phone, '\D', '', 'g'), digits) > 0
        AND (r.practice_id = own OR r.dog_id = ANY (shared)) AND r.role IN ('owner', 'coOwner') AND r.valid_until IS NULL;
  END IF;
END $$;
REVOKE ALL ON FUNCTION app.dog_hits FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.dog_hits TO app_rls;
