-- Tenancy in the database. Every statement of the api runs as app_rls, which owns nothing and cannot
-- bypass a policy; the practice (or centre) is a setting of the transaction. The worker may also act as
-- app_system, which sees everything because policies say so, not because it is exempt from them.

DO $$ BEGIN CREATE ROLE app_rls NOLOGIN; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$;
DO $$ BEGIN CREATE ROLE app_system NOLOGIN; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$;
DO $$ BEGIN CREATE ROLE cotyla_api LOGIN NOINHERIT; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$;
DO $$ BEGIN CREATE ROLE cotyla_worker LOGIN NOINHERIT; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$;
DO $$ BEGIN
  GRANT app_rls TO cotyla_api;
  GRANT app_rls TO cotyla_worker;
  GRANT app_system TO cotyla_worker;
EXCEPTION WHEN unique_violation OR internal_error THEN NULL; END $$;

-- The queue keeps its tables in a schema of its own, which the worker makes.
DO $$ BEGIN EXECUTE format('GRANT CREATE ON DATABASE %I TO cotyla_worker', current_database()); END $$;

CREATE SCHEMA app;
GRANT USAGE ON SCHEMA app TO app_rls, app_system;
GRANT USAGE ON SCHEMA public TO app_rls, app_system;

CREATE FUNCTION app.practice() RETURNS uuid LANGUAGE sql STABLE AS $$ SELECT nullif(current_setting('app.practice', true), '')::uuid $$;
CREATE FUNCTION app.centre() RETURNS uuid LANGUAGE sql STABLE AS $$ SELECT nullif(current_setting('app.centre', true), '')::uuid $$;

-- Seen by its own practice and by those it was referred to. Definer, so that a policy may ask without
-- asking the policies of the tables behind it again.
CREATE FUNCTION app.sees_order(wanted uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT EXISTS (SELECT 1 FROM order_access a WHERE a.order_id = wanted AND a.practice_id = app.practice()) $$;
CREATE FUNCTION app.sees_dog(wanted uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT EXISTS (SELECT 1 FROM orders o JOIN order_access a ON a.order_id = o.id WHERE o.dog_id = wanted AND a.practice_id = app.practice()) $$;
CREATE FUNCTION app.sees_person(wanted uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT EXISTS (SELECT 1 FROM dog_role r JOIN orders o ON o.dog_id = r.dog_id JOIN order_access a ON a.order_id = o.id
                  WHERE r.person_id = wanted AND a.practice_id = app.practice()) $$;
CREATE FUNCTION app.centre_reads(wanted uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT EXISTS (SELECT 1 FROM package_access a WHERE a.package_id = wanted AND a.centre_id = app.centre()) $$;
CREATE FUNCTION app.owns_package(wanted uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT EXISTS (SELECT 1 FROM package p JOIN order_access a ON a.order_id = p.order_id WHERE p.id = wanted AND a.practice_id = app.practice()) $$;
CREATE FUNCTION app.is_demo() RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT COALESCE((SELECT demo FROM scheme LIMIT 1), false) $$;

-- The system role: the worker's sweeps and sends.
DO $$ DECLARE t text; BEGIN
  FOR t IN SELECT tablename FROM pg_tables WHERE schemaname = 'public' AND tablename NOT LIKE '\_prisma%' AND tablename <> 'rate_limits' LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %I TO app_system', t);
    EXECUTE format('CREATE POLICY system ON %I TO app_system USING (true) WITH CHECK (true)', t);
  END LOOP;
END $$;
-- Facts and the audit are appended, whoever writes.
REVOKE UPDATE, DELETE ON fact, audit FROM app_system;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO app_rls, app_system;

-- Known to everybody who takes part.
GRANT SELECT (id, name, country, currency, zone, demo, breeds, public_key, created_at) ON scheme TO app_rls;
CREATE POLICY read ON scheme FOR SELECT TO app_rls USING (true);
GRANT SELECT, INSERT, UPDATE ON centre TO app_rls;
CREATE POLICY read ON centre FOR SELECT TO app_rls USING (true);
CREATE POLICY write ON centre FOR INSERT TO app_rls WITH CHECK (app.practice() IS NOT NULL);
CREATE POLICY change ON centre FOR UPDATE TO app_rls USING (app.practice() IS NOT NULL);

-- A practice's own.
GRANT SELECT, UPDATE ON practice TO app_rls;
CREATE POLICY own ON practice TO app_rls USING (id = app.practice()) WITH CHECK (id = app.practice());
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['room', 'equipment', 'accreditation', 'approved_text'] LOOP
    EXECUTE format('GRANT SELECT, INSERT, UPDATE ON %I TO app_rls', t);
    EXECUTE format('CREATE POLICY own ON %I TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice())', t);
  END LOOP;
END $$;
-- Approved texts and accreditations are followed by newer rows, never rewritten.
REVOKE UPDATE ON approved_text, accreditation FROM app_rls;

GRANT SELECT (id, scheme_id, practice_id, centre_id, name, email, roles, active), INSERT, UPDATE (name, roles, active, password_hash) ON staff TO app_rls;
CREATE POLICY own ON staff FOR SELECT TO app_rls USING (practice_id = app.practice() OR centre_id = app.centre());
CREATE POLICY add ON staff FOR INSERT TO app_rls WITH CHECK (practice_id = app.practice() OR (practice_id IS NULL AND centre_id IS NOT NULL AND app.practice() IS NOT NULL));
CREATE POLICY change ON staff FOR UPDATE TO app_rls USING (practice_id = app.practice());

-- Dogs and people: a practice's own, and read with an order that was shared.
GRANT SELECT, INSERT, UPDATE ON person, dog, dog_name, dog_identifier, stud_book_number, dog_role TO app_rls;
CREATE POLICY own ON dog TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
CREATE POLICY shared ON dog FOR SELECT TO app_rls USING (app.sees_dog(id));
CREATE POLICY own ON person TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
CREATE POLICY shared ON person FOR SELECT TO app_rls USING (app.sees_person(id));
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['dog_name', 'dog_identifier', 'stud_book_number', 'dog_role'] LOOP
    EXECUTE format('CREATE POLICY own ON %I TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice())', t);
    EXECUTE format('CREATE POLICY shared ON %I FOR SELECT TO app_rls USING (app.sees_dog(dog_id))', t);
  END LOOP;
END $$;

-- Orders and all that hangs on one.
GRANT SELECT, INSERT, UPDATE ON orders TO app_rls;
CREATE POLICY see ON orders FOR SELECT TO app_rls USING (practice_id = app.practice() OR app.sees_order(id));
CREATE POLICY add ON orders FOR INSERT TO app_rls WITH CHECK (practice_id = app.practice());
CREATE POLICY change ON orders FOR UPDATE TO app_rls USING (app.sees_order(id)) WITH CHECK (app.sees_order(id));
GRANT SELECT ON order_access TO app_rls;
CREATE POLICY own ON order_access FOR SELECT TO app_rls USING (practice_id = app.practice());

CREATE FUNCTION app.open_order() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS
$$ BEGIN INSERT INTO order_access (order_id, practice_id, why) VALUES (NEW.id, NEW.practice_id, 'home'); RETURN NEW; END $$;
CREATE TRIGGER open_order AFTER INSERT ON orders FOR EACH ROW EXECUTE FUNCTION app.open_order();

-- The home practice of an order may let another practice see it; nobody lets itself in.
CREATE FUNCTION app.share_order(shared uuid, with_practice uuid, reason text) RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS
$$ BEGIN
  IF NOT EXISTS (SELECT 1 FROM orders WHERE id = shared AND practice_id = app.practice()) THEN
    RAISE EXCEPTION 'only the practice of an order shares it' USING ERRCODE = '42501';
  END IF;
  INSERT INTO order_access (order_id, practice_id, why) VALUES (shared, with_practice, reason) ON CONFLICT DO NOTHING;
END $$;

GRANT SELECT, INSERT ON fact TO app_rls;
CREATE POLICY see ON fact FOR SELECT TO app_rls USING (app.sees_order(order_id));
CREATE POLICY add ON fact FOR INSERT TO app_rls WITH CHECK (app.sees_order(order_id));
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['visit', 'study', 'image', 'document', 'problem', 'link'] LOOP
    EXECUTE format('GRANT SELECT, INSERT, UPDATE ON %I TO app_rls', t);
    EXECUTE format('CREATE POLICY see ON %I TO app_rls USING (app.sees_order(order_id)) WITH CHECK (app.sees_order(order_id))', t);
  END LOOP;
END $$;
GRANT SELECT, INSERT, DELETE ON slot TO app_rls;
CREATE POLICY own ON slot TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
GRANT SELECT, INSERT, UPDATE ON message TO app_rls;
CREATE POLICY see ON message TO app_rls USING (practice_id = app.practice() OR app.sees_order(order_id)) WITH CHECK (practice_id = app.practice() OR app.sees_order(order_id));
GRANT INSERT ON outbox TO app_rls;
CREATE POLICY add ON outbox FOR INSERT TO app_rls WITH CHECK (true);
GRANT SELECT, INSERT ON audit TO app_rls;
CREATE POLICY see ON audit FOR SELECT TO app_rls USING (practice_id = app.practice() OR app.sees_order(order_id));
CREATE POLICY add ON audit FOR INSERT TO app_rls WITH CHECK (true);

-- A package is its practice's, and the centre's it was sent to.
GRANT SELECT, INSERT, UPDATE ON package TO app_rls;
CREATE POLICY see ON package TO app_rls USING (app.sees_order(order_id)) WITH CHECK (app.sees_order(order_id));
CREATE POLICY read ON package FOR SELECT TO app_rls USING (app.centre_reads(id));
GRANT SELECT, INSERT ON package_access TO app_rls;
CREATE POLICY see ON package_access FOR SELECT TO app_rls USING (centre_id = app.centre() OR app.owns_package(package_id));
CREATE POLICY add ON package_access FOR INSERT TO app_rls WITH CHECK (app.owns_package(package_id));
GRANT UPDATE (state, due_day, reading) ON package_access TO app_rls;
CREATE POLICY follow ON package_access FOR UPDATE TO app_rls USING (centre_id = app.centre() OR app.owns_package(package_id));

GRANT SELECT ON captured_mail TO app_rls;
CREATE POLICY own ON captured_mail FOR SELECT TO app_rls USING (practice_id = app.practice() OR app.is_demo());

-- A sealed package, a fact and an audit row stay as they are, whoever asks.
CREATE FUNCTION app.stays() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION '% is appended, never changed', TG_TABLE_NAME USING ERRCODE = '42501'; END $$;
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON fact FOR EACH ROW EXECUTE FUNCTION app.stays();
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON audit FOR EACH ROW EXECUTE FUNCTION app.stays();

-- Nobody and nothing is in two places at once.
ALTER TABLE slot ADD CONSTRAINT slot_apart EXCLUDE USING gist (resource_id WITH =, period WITH &&);
