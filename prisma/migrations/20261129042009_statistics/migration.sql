-- CreateTable
CREATE TABLE "statistics_study" (
    "study_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "scheme_id" UUID NOT NULL,
    "protocol" TEXT NOT NULL,
    "pool" TEXT NOT NULL,
    "breed" TEXT NOT NULL,
    "age_band" TEXT NOT NULL,
    "born_year" INTEGER NOT NULL,
    "imaged_year" INTEGER NOT NULL,
    "sender" TEXT NOT NULL,
    "unsent" BOOLEAN NOT NULL,
    "accepted_at" TIMESTAMPTZ(3),
    "reading" UUID,
    "counts" BOOLEAN NOT NULL,
    "dog_value" INTEGER,
    "left_value" INTEGER,
    "right_value" INTEGER,

    CONSTRAINT "statistics_study_pkey" PRIMARY KEY ("study_id")
);

-- CreateTable
CREATE TABLE "counting_row" (
    "dog_id" UUID NOT NULL,
    "protocol" TEXT NOT NULL,
    "study_id" UUID NOT NULL,
    "scheme_id" UUID NOT NULL,
    "pool" TEXT NOT NULL,
    "breed" TEXT NOT NULL,
    "age_band" TEXT NOT NULL,
    "born_year" INTEGER NOT NULL,
    "imaged_year" INTEGER NOT NULL,
    "sender" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "reading" UUID,
    "dog_value" INTEGER,
    "left_value" INTEGER,
    "right_value" INTEGER,

    CONSTRAINT "counting_row_pkey" PRIMARY KEY ("dog_id","protocol")
);

-- CreateTable
CREATE TABLE "counting_cell" (
    "scheme_id" UUID NOT NULL,
    "pool" TEXT NOT NULL,
    "breed" TEXT NOT NULL,
    "age_band" TEXT NOT NULL,
    "born_year" INTEGER NOT NULL,
    "sender" TEXT NOT NULL,
    "measure" TEXT NOT NULL,
    "value" INTEGER NOT NULL,
    "n" INTEGER NOT NULL,

    CONSTRAINT "counting_cell_pkey" PRIMARY KEY ("scheme_id","pool","breed","age_band","born_year","sender","measure","value")
);

-- CreateTable
CREATE TABLE "reference_set" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "seq" BIGSERIAL NOT NULL,
    "freeze_id" UUID NOT NULL,
    "scheme_id" UUID NOT NULL,
    "protocol" TEXT NOT NULL,
    "pool" TEXT NOT NULL,
    "breed" TEXT NOT NULL,
    "age_band" TEXT NOT NULL,
    "frozen_on" DATE NOT NULL,
    "n" INTEGER NOT NULL,
    "counts" JSONB NOT NULL,
    "parts" JSONB NOT NULL,
    "unsent" INTEGER NOT NULL,
    "from_year" INTEGER NOT NULL,
    "to_year" INTEGER NOT NULL,

    CONSTRAINT "reference_set_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "reference_member" (
    "set_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "reading" UUID NOT NULL,

    CONSTRAINT "reference_member_pkey" PRIMARY KEY ("set_id","dog_id")
);

-- CreateTable
CREATE TABLE "reference_freeze" (
    "id" UUID NOT NULL,
    "scheme_id" UUID NOT NULL,
    "day" DATE NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by_name" TEXT NOT NULL,
    "frozen" INTEGER NOT NULL,
    "waiting" INTEGER NOT NULL,

    CONSTRAINT "reference_freeze_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "statistics_study_dog_id_protocol_idx" ON "statistics_study"("dog_id", "protocol");

-- CreateIndex
CREATE INDEX "statistics_study_order_id_idx" ON "statistics_study"("order_id");

-- CreateIndex
CREATE INDEX "counting_row_scheme_id_pool_breed_age_band_idx" ON "counting_row"("scheme_id", "pool", "breed", "age_band");

-- CreateIndex
CREATE INDEX "reference_set_scheme_id_pool_breed_age_band_seq_idx" ON "reference_set"("scheme_id", "pool", "breed", "age_band", "seq");

-- CreateIndex
CREATE INDEX "reference_freeze_scheme_id_at_idx" ON "reference_freeze"("scheme_id", "at");

-- Nobody reads or writes these tables but the functions below and the worker.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['statistics_study', 'counting_row', 'counting_cell', 'reference_set', 'reference_member', 'reference_freeze'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('GRANT SELECT ON %I TO app_system', t);
    EXECUTE format('CREATE POLICY system ON %I TO app_system USING (true) WITH CHECK (true)', t);
  END LOOP;
END $$;
GRANT INSERT ON reference_set, reference_freeze TO app_system;
GRANT INSERT, DELETE ON reference_member TO app_system;
GRANT DELETE ON statistics_study TO app_system;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO app_system;
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON reference_set FOR EACH ROW EXECUTE FUNCTION app.stays();
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON reference_freeze FOR EACH ROW EXECUTE FUNCTION app.stays();
ALTER TABLE counting_cell ADD CONSTRAINT counting_cell_dogs CHECK (n >= 0);

-- What the facts of an order say to statistics, from whoever changes the order; dog, breed, scheme and sender are
-- looked up here, so that a practice that only shares the order need not see them.
CREATE FUNCTION app.note_studies(of_order uuid, rows jsonb) RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  IF NOT (app.sees_order(of_order) OR current_setting('role', true) = 'app_system') THEN
    RAISE EXCEPTION 'only who sees an order says what it counts for' USING ERRCODE = '42501';
  END IF;
  INSERT INTO statistics_study AS s (study_id, order_id, dog_id, scheme_id, protocol, pool, breed, age_band, born_year, imaged_year, sender, unsent, accepted_at, reading, counts, dog_value, left_value, right_value)
    SELECT r.study, o.id, o.dog_id, p.scheme_id, r.protocol, r.pool, lower(btrim(d.breed)), r.age_band, r.born_year, r.imaged_year,
      CASE WHEN EXISTS (SELECT 1 FROM group_booking_dog g JOIN group_booking b ON b.id = g.group_id WHERE g.order_id = o.id AND b.litter AND b.whole) THEN 'litter' ELSE 'chosen' END,
      r.unsent, r.accepted_at, r.reading, r.counts, r.dog_value, r.left_value, r.right_value
    FROM jsonb_to_recordset(rows) AS r(study uuid, protocol text, pool text, age_band text, born_year int, imaged_year int, unsent boolean, accepted_at timestamptz, reading uuid, counts boolean, dog_value int, left_value int, right_value int)
      JOIN orders o ON o.id = of_order JOIN practice p ON p.id = o.practice_id JOIN dog d ON d.id = o.dog_id
  ON CONFLICT (study_id) DO UPDATE SET dog_id = excluded.dog_id, scheme_id = excluded.scheme_id, pool = excluded.pool, breed = excluded.breed, age_band = excluded.age_band, born_year = excluded.born_year,
      imaged_year = excluded.imaged_year, sender = excluded.sender, unsent = excluded.unsent, accepted_at = excluded.accepted_at, reading = excluded.reading, counts = excluded.counts,
      dog_value = excluded.dog_value, left_value = excluded.left_value, right_value = excluded.right_value
    WHERE s.order_id = excluded.order_id AND (s.dog_id, s.scheme_id, s.pool, s.breed, s.age_band, s.born_year, s.imaged_year, s.sender, s.unsent, s.accepted_at, s.reading, s.counts, s.dog_value, s.left_value, s.right_value)
      IS DISTINCT FROM (excluded.dog_id, excluded.scheme_id, excluded.pool, excluded.breed, excluded.age_band, excluded.born_year, excluded.imaged_year, excluded.sender, excluded.unsent, excluded.accepted_at, excluded.reading, excluded.counts, excluded.dog_value, excluded.left_value, excluded.right_value);
END $$;

-- The reading that counts for a dog is of the examination that was accepted first (protocol rule firstAccepted), and
-- within it the one that stands. A dog whose first examination may not be counted is not counted by a later one. A
-- dog that has only films that were never sent is counted as such.
CREATE VIEW app.counting_choice AS
  SELECT dog_id, protocol, study_id, scheme_id, pool, breed, age_band, born_year, imaged_year, sender, state, reading, dog_value, left_value, right_value
  FROM (SELECT DISTINCT ON (dog_id, protocol) *, CASE WHEN accepted_at IS NULL THEN 'unsent' ELSE 'counted' END AS state
        FROM statistics_study WHERE accepted_at IS NOT NULL OR unsent ORDER BY dog_id, protocol, accepted_at NULLS LAST, study_id) first
  WHERE state = 'unsent' OR counts;

-- The cells of a counting row.
CREATE VIEW app.counting_part AS
  SELECT r.*, m.measure, m.value FROM counting_row r CROSS JOIN LATERAL (VALUES
    ('dog', CASE WHEN r.state = 'counted' THEN r.dog_value END), ('left', CASE WHEN r.state = 'counted' THEN r.left_value END), ('right', CASE WHEN r.state = 'counted' THEN r.right_value END),
    ('unsent', CASE WHEN r.state = 'unsent' THEN 0 END)) AS m(measure, value)
  WHERE m.value IS NOT NULL;

CREATE FUNCTION app.count_dog(of_dog uuid, of_protocol text) RETURNS void LANGUAGE plpgsql SET search_path = public AS $$
BEGIN
  UPDATE counting_cell c SET n = c.n - 1 FROM app.counting_part p WHERE p.dog_id = of_dog AND p.protocol = of_protocol
    AND (c.scheme_id, c.pool, c.breed, c.age_band, c.born_year, c.sender, c.measure, c.value) = (p.scheme_id, p.pool, p.breed, p.age_band, p.born_year, p.sender, p.measure, p.value);
  DELETE FROM counting_cell c USING app.counting_part p WHERE c.n = 0 AND p.dog_id = of_dog AND p.protocol = of_protocol
    AND (c.scheme_id, c.pool, c.breed, c.age_band, c.born_year, c.sender, c.measure, c.value) = (p.scheme_id, p.pool, p.breed, p.age_band, p.born_year, p.sender, p.measure, p.value);
  DELETE FROM counting_row WHERE dog_id = of_dog AND protocol = of_protocol;
  INSERT INTO counting_row SELECT * FROM app.counting_choice WHERE dog_id = of_dog AND protocol = of_protocol;
  INSERT INTO counting_cell AS c (scheme_id, pool, breed, age_band, born_year, sender, measure, value, n)
    SELECT scheme_id, pool, breed, age_band, born_year, sender, measure, value, 1 FROM app.counting_part WHERE dog_id = of_dog AND protocol = of_protocol
  ON CONFLICT (scheme_id, pool, breed, age_band, born_year, sender, measure, value) DO UPDATE SET n = c.n + 1;
END $$;

-- One at a time, and at the end of the transaction, when it takes no other lock any more: the rows of two orders of
-- one dog are seen together, and nobody waits in a circle.
CREATE FUNCTION app.recount() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('counting', 0));
  IF TG_OP <> 'INSERT' THEN PERFORM app.count_dog(OLD.dog_id, OLD.protocol); END IF;
  IF TG_OP <> 'DELETE' THEN PERFORM app.count_dog(NEW.dog_id, NEW.protocol); END IF;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER recount AFTER INSERT OR UPDATE OR DELETE ON statistics_study DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION app.recount();

-- A dog that was entered twice takes its orders along, and its counting.
CREATE FUNCTION app.follow_dog() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  UPDATE statistics_study s SET dog_id = d.id, breed = lower(btrim(d.breed)) FROM dog d WHERE d.id = NEW.dog_id AND s.order_id = NEW.id;
  RETURN NULL;
END $$;
CREATE TRIGGER follow_dog AFTER UPDATE OF dog_id ON orders FOR EACH ROW WHEN (OLD.dog_id IS DISTINCT FROM NEW.dog_id) EXECUTE FUNCTION app.follow_dog();

-- Rows and histograms anew from what the orders say; whatever was in them is gone.
CREATE FUNCTION app.rebuild_cells() RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('counting', 0));
  TRUNCATE counting_cell;
  INSERT INTO counting_cell SELECT scheme_id, pool, breed, age_band, born_year, sender, measure, value, count(*) FROM app.counting_part GROUP BY 1, 2, 3, 4, 5, 6, 7, 8;
END $$;
CREATE FUNCTION app.rebuild_counts() RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('counting', 0));
  TRUNCATE counting_row;
  INSERT INTO counting_row SELECT * FROM app.counting_choice;
  PERFORM app.rebuild_cells();
END $$;

-- A set as it may be told: the newest, below 5 dogs nothing, below 20 the number alone.
CREATE VIEW app.told_set AS
  SELECT DISTINCT ON (scheme_id, pool, breed, age_band) id, scheme_id, protocol, pool, breed, age_band, frozen_on, n,
    CASE WHEN n >= 20 THEN counts END AS counts, CASE WHEN n >= 20 THEN parts END AS parts, unsent, from_year, to_year
  FROM reference_set ORDER BY scheme_id, pool, breed, age_band, seq DESC;

CREATE FUNCTION app.set_in_force(of_order uuid, of_pool text, of_band text) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT to_jsonb(t) FROM orders o JOIN practice p ON p.id = o.practice_id JOIN dog d ON d.id = o.dog_id
    JOIN app.told_set t ON t.scheme_id = p.scheme_id AND t.pool = of_pool AND t.breed = lower(btrim(d.breed)) AND t.age_band = of_band
  WHERE o.id = of_order AND t.n >= 5 AND (app.sees_order(of_order) OR current_setting('role', true) = 'app_system')
$$;

-- For the scheme lead: every set in force and what was frozen when; no dog, no owner, no practice.
CREATE FUNCTION app.scheme_sets(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT jsonb_build_object(
    'sets', COALESCE((SELECT jsonb_agg(jsonb_build_object('id', t.id, 'pool', t.pool, 'breed', t.breed, 'ageBand', t.age_band, 'frozenOn', t.frozen_on, 'n', t.n, 'unsent', t.unsent, 'fromYear', t.from_year, 'toYear', t.to_year) ORDER BY t.breed, t.pool, t.age_band)
      FROM app.told_set t WHERE t.scheme_id = wanted AND t.n >= 5), '[]'),
    'last', (SELECT jsonb_build_object('day', f.day, 'byName', f.by_name, 'frozen', f.frozen, 'waiting', f.waiting) FROM reference_freeze f WHERE f.scheme_id = wanted ORDER BY f.at DESC LIMIT 1))
$$;
CREATE FUNCTION app.scheme_set(of_scheme uuid, wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT to_jsonb(t) FROM app.told_set t WHERE t.id = wanted AND t.scheme_id = of_scheme AND t.n >= 5
$$;

REVOKE ALL ON FUNCTION app.note_studies, app.count_dog, app.recount, app.follow_dog, app.rebuild_cells, app.rebuild_counts, app.set_in_force, app.scheme_sets, app.scheme_set FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.note_studies, app.set_in_force, app.scheme_sets, app.scheme_set TO app_rls, app_system;
GRANT EXECUTE ON FUNCTION app.rebuild_cells, app.rebuild_counts TO app_system;
