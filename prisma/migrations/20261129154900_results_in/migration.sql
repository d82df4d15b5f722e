-- CreateTable
CREATE TABLE "centre_key" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "centre_id" UUID NOT NULL,
    "secret" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "ended_at" TIMESTAMPTZ(3),
    "ended_by_name" TEXT,
    "last_used_at" TIMESTAMPTZ(3),
    "last_refused_at" TIMESTAMPTZ(3),

    CONSTRAINT "centre_key_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "used_signature" (
    "signature" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "used_signature_pkey" PRIMARY KEY ("signature")
);

-- CreateTable
CREATE TABLE "result_delivery" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "centre_id" UUID NOT NULL,
    "practice_id" UUID,
    "way" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "name" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "answer" JSONB,

    CONSTRAINT "result_delivery_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "result_left" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "delivery_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "centre_id" UUID NOT NULL,
    "order_id" UUID,
    "said" JSONB NOT NULL,
    "words" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "settled_at" TIMESTAMPTZ(3),
    "settled_by" TEXT,
    "settled_by_name" TEXT,
    "settled_why" TEXT,

    CONSTRAINT "result_left_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "centre_key_centre_id_idx" ON "centre_key"("centre_id");

-- CreateIndex
CREATE UNIQUE INDEX "result_delivery_centre_id_key_key" ON "result_delivery"("centre_id", "key");

-- CreateIndex
CREATE INDEX "result_left_centre_id_idx" ON "result_left"("centre_id");

-- CreateIndex
CREATE INDEX "result_left_order_id_idx" ON "result_left"("order_id");

-- CreateIndex
CREATE UNIQUE INDEX "result_left_delivery_id_place_key" ON "result_left"("delivery_id", "place");

-- A secret is written once and read by the door below alone. Whoever registered a centre, or acts for it, makes and ends its keys.
ALTER TABLE centre_key ENABLE ROW LEVEL SECURITY;
GRANT SELECT (id, centre_id, at, by_name, ended_at, ended_by_name, last_used_at, last_refused_at), INSERT, UPDATE (ended_at, ended_by_name) ON centre_key TO app_rls;
GRANT SELECT, INSERT ON centre_key TO app_system;
CREATE POLICY system ON centre_key TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON centre_key TO app_rls USING (centre_id = app.centre() OR app.registered_centre(centre_id)) WITH CHECK (centre_id = app.centre() OR app.registered_centre(centre_id));

ALTER TABLE used_signature ENABLE ROW LEVEL SECURITY;
GRANT SELECT ON used_signature TO app_system;
CREATE POLICY system ON used_signature TO app_system USING (true);

-- What came stays as it came. A file of a practice's desk is that practice's; all else is the centre's.
ALTER TABLE result_delivery ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE (answer) ON result_delivery TO app_rls;
GRANT SELECT, INSERT ON result_delivery TO app_system;
CREATE POLICY system ON result_delivery TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON result_delivery TO app_rls USING (practice_id = app.practice() OR (practice_id IS NULL AND centre_id = app.centre())) WITH CHECK (practice_id = app.practice() OR (practice_id IS NULL AND centre_id = app.centre()));

-- Seen by the centre that sent it and by whoever sees the order; one that names no order of the centre, by whoever registered the centre.
ALTER TABLE result_left ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE (settled_at, settled_by, settled_by_name, settled_why) ON result_left TO app_rls;
GRANT SELECT, INSERT ON result_left TO app_system;
CREATE POLICY system ON result_left TO app_system USING (true) WITH CHECK (true);
CREATE POLICY see ON result_left FOR SELECT TO app_rls USING (centre_id = app.centre() OR app.sees_order(order_id) OR (order_id IS NULL AND app.registered_centre(centre_id)));
CREATE POLICY settle ON result_left FOR UPDATE TO app_rls USING (centre_id = app.centre() OR app.sees_order(order_id) OR (order_id IS NULL AND app.registered_centre(centre_id)));
CREATE POLICY add ON result_left FOR INSERT TO app_rls WITH CHECK (centre_id = app.centre() AND (order_id IS NULL OR EXISTS (SELECT 1 FROM package p WHERE p.order_id = result_left.order_id)));

CREATE FUNCTION app.said_once() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN RAISE EXCEPTION 'what came stays' USING ERRCODE = 'insufficient_privilege'; END IF;
  IF TG_TABLE_NAME = 'result_left' AND to_jsonb(OLD)->>'settled_at' IS NOT NULL OR TG_TABLE_NAME = 'result_delivery' AND to_jsonb(OLD)->>'answer' IS NOT NULL OR TG_TABLE_NAME = 'centre_key' AND to_jsonb(OLD)->>'ended_at' IS NOT NULL THEN
    RAISE EXCEPTION 'this has been said already' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER said_once BEFORE UPDATE OR DELETE ON result_left FOR EACH ROW EXECUTE FUNCTION app.said_once();
CREATE TRIGGER said_once BEFORE UPDATE OR DELETE ON result_delivery FOR EACH ROW EXECUTE FUNCTION app.said_once();
CREATE TRIGGER said_once BEFORE UPDATE OR DELETE ON centre_key FOR EACH ROW EXECUTE FUNCTION app.said_once();

-- A centre does not see orders. By an order's number it is led to the packages that it was sent of it, and to nothing else.
CREATE FUNCTION app.packages_of_order(wanted text) RETURNS SETOF uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT p.id FROM orders o JOIN package p ON p.order_id = o.id WHERE o.accession = wanted AND (app.centre_reads(p.id) OR app.sees_order(o.id)) $$;
-- Which readings of a package's study are there already, by the ids they were given.
CREATE FUNCTION app.readings_there(parcel uuid) RETURNS text[] LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT COALESCE(array_agg(f.id), '{}') FROM package p JOIN fact f ON f.order_id = p.order_id AND f.type = 'resultArrived' AND f.body->>'study' = p.study_id::text
   WHERE p.id = parcel AND (app.centre_reads(p.id) OR app.sees_order(p.order_id)) $$;
REVOKE ALL ON FUNCTION app.packages_of_order, app.readings_there, app.said_once FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.packages_of_order, app.readings_there TO app_rls, app_system;

-- The door of the messages. A key that was ended has no secret any more.
CREATE FUNCTION app.centre_secret(wanted uuid) RETURNS TABLE (centre uuid, name text, secret text) LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT c.id, c.name, k.secret FROM centre_key k JOIN centre c ON c.id = k.centre_id WHERE k.id = wanted AND k.ended_at IS NULL $$;
-- Whether a right signature is seen for the first time. Older ones than the time in which one is taken need not be kept.
CREATE FUNCTION app.use_signature(wanted uuid, used text, moment timestamptz, forget_before timestamptz) RETURNS boolean LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  DELETE FROM used_signature WHERE at < forget_before;
  INSERT INTO used_signature (signature, at) VALUES (used, moment) ON CONFLICT DO NOTHING;
  IF NOT FOUND THEN RETURN false; END IF;
  UPDATE centre_key SET last_used_at = moment WHERE id = wanted AND ended_at IS NULL;
  RETURN true;
END $$;
CREATE FUNCTION app.signature_refused(wanted uuid, moment timestamptz) RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = public AS
$$ UPDATE centre_key SET last_refused_at = moment WHERE id = wanted AND ended_at IS NULL $$;
REVOKE ALL ON FUNCTION app.centre_secret, app.use_signature, app.signature_refused FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.centre_secret, app.use_signature, app.signature_refused TO cotyla_api;
