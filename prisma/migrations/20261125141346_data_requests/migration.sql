-- CreateTable
CREATE TABLE "data_request" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "asked" TEXT NOT NULL,
    "received" DATE NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "data_request_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "data_request_event" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "seq" BIGSERIAL NOT NULL,
    "practice_id" UUID NOT NULL,
    "request_id" UUID NOT NULL,
    "type" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "until" DATE,

    CONSTRAINT "data_request_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "tombstone" (
    "person_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "tombstone_pkey" PRIMARY KEY ("person_id")
);

-- CreateIndex
CREATE INDEX "data_request_practice_id_received_idx" ON "data_request"("practice_id", "received");

-- CreateIndex
CREATE INDEX "data_request_person_id_idx" ON "data_request"("person_id");

-- CreateIndex
CREATE INDEX "data_request_event_request_id_seq_idx" ON "data_request_event"("request_id", "seq");

-- CreateIndex
CREATE INDEX "tombstone_practice_id_idx" ON "tombstone"("practice_id");


-- A practice's own; appended, and followed by newer rows.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['data_request', 'data_request_event', 'tombstone'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('GRANT SELECT, INSERT ON %I TO app_rls, app_system', t);
    EXECUTE format('CREATE POLICY system ON %I TO app_system USING (true) WITH CHECK (true)', t);
    EXECUTE format('CREATE POLICY own ON %I TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice())', t);
    EXECUTE format('CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION app.stays()', t);
  END LOOP;
END $$;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO app_rls, app_system;

-- Takes a person out of the register and out of everything that could still reach them. Facts and papers are not
-- touched: they are the record of a treatment. A restore calls this again for everybody with a tombstone.
CREATE FUNCTION app.blank_person(wanted uuid, moment timestamptz) RETURNS void LANGUAGE plpgsql SET search_path = public AS $$
DECLARE known person%ROWTYPE;
BEGIN
  SELECT * INTO known FROM person WHERE id = wanted FOR UPDATE;
  IF NOT FOUND THEN RETURN; END IF;
  DELETE FROM session s USING link l WHERE s.link_id = l.id AND l.person_id = wanted;
  UPDATE link SET revoked_at = COALESCE(revoked_at, moment) WHERE person_id = wanted;
  UPDATE message SET to_name = 'Erased on request', to_email = '', body = jsonb_build_object('template', body->'template', 'data', '{}'::jsonb),
      state = CASE WHEN state = 'waiting' THEN 'dropped' ELSE state END, detail = CASE WHEN state = 'waiting' THEN 'ERASED' ELSE detail END, done_at = COALESCE(done_at, moment)
    WHERE person_id = wanted;
  IF known.email IS NOT NULL THEN DELETE FROM captured_mail WHERE practice_id = known.practice_id AND strpos(lower("to"), lower(known.email)) > 0; END IF;
  UPDATE person SET name = 'Erased on request', latin_name = NULL, email = NULL, phone = NULL, address = NULL, channel = 'none', erased_at = COALESCE(erased_at, moment) WHERE id = wanted;
END $$;

-- The practice that keeps a person erases them, and nobody else does.
CREATE FUNCTION app.erase_person(wanted uuid, moment timestamptz) RETURNS boolean LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM person WHERE id = wanted AND practice_id = app.practice()) THEN RETURN false; END IF;
  PERFORM app.blank_person(wanted, moment);
  INSERT INTO tombstone (person_id, practice_id, at) VALUES (wanted, app.practice(), moment) ON CONFLICT DO NOTHING;
  RETURN true;
END $$;

-- Whose data are kept and not used: asked in every transaction that sends a mail.
CREATE FUNCTION app.is_restricted(wanted uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT EXISTS (SELECT 1 FROM data_request r JOIN LATERAL (
      SELECT e.type FROM data_request_event e WHERE e.request_id = r.id AND e.type IN ('restricted', 'restrictionLifted') ORDER BY e.seq DESC LIMIT 1) last ON true
    WHERE r.person_id = wanted AND last.type = 'restricted')
$$;

-- Deaths in care and harm among sedated visits, over the whole scheme: a count, no practice and no dog.
CREATE FUNCTION app.scheme_harm(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  WITH stands AS (
    SELECT f.* FROM fact f JOIN orders o ON o.id = f.order_id JOIN practice p ON p.id = o.practice_id
    WHERE p.scheme_id = wanted AND f.type IN ('sedationStarted', 'dogDied', 'harmRecorded')
      AND NOT EXISTS (SELECT 1 FROM fact s WHERE s.order_id = f.order_id AND s.type = 'factStruck' AND s.body->>'fact' = f.id)),
  slept AS (SELECT order_id, body->>'visit' AS visit, min(at) AS at FROM stands WHERE type = 'sedationStarted' GROUP BY 1, 2)
  SELECT jsonb_build_object(
    'sedated', (SELECT count(*)::int FROM slept),
    'since', (SELECT min(at) FROM slept),
    'diedInCare', (SELECT count(DISTINCT order_id)::int FROM stands WHERE type = 'dogDied' AND (body->>'inCare')::boolean AND order_id IN (SELECT order_id FROM slept)),
    'harmed', (SELECT count(DISTINCT order_id)::int FROM stands WHERE type = 'harmRecorded' AND order_id IN (SELECT order_id FROM slept)))
$$;

REVOKE ALL ON FUNCTION app.blank_person, app.erase_person, app.is_restricted, app.scheme_harm FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.erase_person, app.is_restricted, app.scheme_harm TO app_rls, app_system;
