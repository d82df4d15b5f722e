-- CreateTable
CREATE TABLE "console" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "ae_title" TEXT NOT NULL,
    "address" INET NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "console_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "received_image" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "console_id" UUID NOT NULL,
    "sop_uid" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "preview_sha" TEXT,
    "size" INTEGER NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "image_day" DATE,
    "patient_id" TEXT,
    "row_mm" DOUBLE PRECISION,
    "column_mm" DOUBLE PRECISION,
    "said" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "order_id" UUID,
    "why" TEXT,
    "settled_at" TIMESTAMPTZ(3),
    "settled_by" TEXT,
    "settled_by_name" TEXT,
    "settled_order" UUID,
    "settled_why" TEXT,
    "left_out_at" TIMESTAMPTZ(3),
    "left_out_by" TEXT,
    "left_out_by_name" TEXT,
    "left_out_why" TEXT,

    CONSTRAINT "received_image_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "console_practice_id_idx" ON "console"("practice_id");

-- CreateIndex
CREATE INDEX "received_image_order_id_idx" ON "received_image"("order_id");

-- CreateIndex
CREATE INDEX "received_image_settled_order_idx" ON "received_image"("settled_order");

-- CreateIndex
CREATE UNIQUE INDEX "received_image_practice_id_sop_uid_key" ON "received_image"("practice_id", "sop_uid");

-- One practice's own. A machine is ended and never removed, so that old images keep their sender.
ALTER TABLE console ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE (ended_at) ON console TO app_rls;
GRANT SELECT, INSERT ON console TO app_system;
CREATE POLICY system ON console TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON console TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
CREATE UNIQUE INDEX console_once ON console (practice_id, ae_title, address) WHERE ended_at IS NULL;

ALTER TABLE received_image ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE (settled_at, settled_by, settled_by_name, settled_order, settled_why, left_out_at, left_out_by, left_out_by_name, left_out_why) ON received_image TO app_rls;
GRANT SELECT, INSERT, UPDATE (preview_sha) ON received_image TO app_system;
CREATE POLICY system ON received_image TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON received_image TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());

-- What came stays as it came; it is settled once and left out once, and the owner's name that a machine wrote beside the dog's goes when it is settled.
CREATE FUNCTION app.received_once() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE'
    OR OLD.settled_at IS NOT NULL AND (NEW.settled_at, NEW.settled_by, NEW.settled_by_name, NEW.settled_order, NEW.settled_why) IS DISTINCT FROM (OLD.settled_at, OLD.settled_by, OLD.settled_by_name, OLD.settled_order, OLD.settled_why)
    OR OLD.left_out_at IS NOT NULL AND (NEW.left_out_at, NEW.left_out_by, NEW.left_out_by_name, NEW.left_out_why) IS DISTINCT FROM (OLD.left_out_at, OLD.left_out_by, OLD.left_out_by_name, OLD.left_out_why) THEN
    RAISE EXCEPTION 'what was received stays' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF NEW.settled_at IS NOT NULL THEN NEW.said := NEW.said - 'patientName'; END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER received_once BEFORE UPDATE OR DELETE ON received_image FOR EACH ROW EXECUTE FUNCTION app.received_once();

-- An image that came, and its small picture, stand on the order's page before anybody has named them.
CREATE FUNCTION app.left_out() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  PERFORM app.say_order_changed(COALESCE(NEW.order_id, NEW.settled_order));
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION app.left_out FROM PUBLIC;
CREATE TRIGGER left_out AFTER UPDATE OF left_out_at ON received_image FOR EACH ROW WHEN (COALESCE(NEW.order_id, NEW.settled_order) IS NOT NULL) EXECUTE FUNCTION app.left_out();
CREATE TRIGGER image_changed AFTER INSERT OR UPDATE OF preview_sha ON image FOR EACH ROW EXECUTE FUNCTION app.part_of_order_changed();

-- The name by which machines call this program for one practice: at most 16 signs, and no secret.
CREATE FUNCTION app.called_title(practice uuid) RETURNS text LANGUAGE sql IMMUTABLE AS
$$ SELECT 'COTYLA' || upper(right(replace(practice::text, '-', ''), 10)) $$;
GRANT EXECUTE ON FUNCTION app.called_title TO app_rls, app_system;

-- The door of the machines: whom they call, what they call themselves and where they stand must all be known to one practice.
CREATE FUNCTION app.console_at(called text, calling text, stands inet) RETURNS TABLE (practice uuid, console uuid, name text) LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT c.practice_id, c.id, c.name FROM console c
  WHERE c.ended_at IS NULL AND app.called_title(c.practice_id) = called AND c.ae_title = calling AND stands <<= c.address
$$;
REVOKE ALL ON FUNCTION app.console_at FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.console_at TO cotyla_api;
