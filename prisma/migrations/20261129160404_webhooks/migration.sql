-- CreateTable
CREATE TABLE "webhook" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "events" TEXT[],
    "secret" TEXT NOT NULL,
    "earlier_secret" TEXT,
    "earlier_until" TIMESTAMPTZ(3),
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "ended_at" TIMESTAMPTZ(3),
    "ended_by_name" TEXT,

    CONSTRAINT "webhook_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "webhook_delivery" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "webhook_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "accession" TEXT NOT NULL,
    "event" TEXT NOT NULL,
    "event_id" TEXT NOT NULL,
    "event_at" TIMESTAMPTZ(3) NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "tries" INTEGER NOT NULL DEFAULT 0,
    "due_at" TIMESTAMPTZ(3) NOT NULL,
    "claimed_at" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "webhook_delivery_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "webhook_try" (
    "id" BIGSERIAL NOT NULL,
    "delivery_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "status" INTEGER,
    "words" TEXT NOT NULL,

    CONSTRAINT "webhook_try_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "webhook_practice_id_idx" ON "webhook"("practice_id");

-- CreateIndex
CREATE INDEX "webhook_delivery_practice_id_created_at_idx" ON "webhook_delivery"("practice_id", "created_at");

-- CreateIndex
CREATE INDEX "webhook_delivery_state_due_at_idx" ON "webhook_delivery"("state", "due_at");

-- CreateIndex
CREATE UNIQUE INDEX "webhook_delivery_webhook_id_event_id_key" ON "webhook_delivery"("webhook_id", "event_id");

-- CreateIndex
CREATE INDEX "webhook_try_delivery_id_idx" ON "webhook_try"("delivery_id");

-- One practice's own. The secrets are read by the worker alone.
ALTER TABLE webhook ENABLE ROW LEVEL SECURITY;
GRANT SELECT (id, practice_id, name, address, events, earlier_until, at, by, by_name, ended_at, ended_by_name), INSERT, UPDATE (ended_at, ended_by_name) ON webhook TO app_rls;
GRANT SELECT, INSERT ON webhook TO app_system;
CREATE POLICY system ON webhook TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON webhook TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());

-- Deliveries are written with the facts they tell of, by the function below; a person only lets one go again.
ALTER TABLE webhook_delivery ENABLE ROW LEVEL SECURITY;
GRANT SELECT, UPDATE (state, tries, due_at, claimed_at) ON webhook_delivery TO app_rls;
GRANT SELECT, INSERT, UPDATE (state, tries, due_at, claimed_at) ON webhook_delivery TO app_system;
CREATE POLICY system ON webhook_delivery TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON webhook_delivery TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
ALTER TABLE webhook_delivery ADD CONSTRAINT webhook_delivery_state CHECK (state IN ('waiting', 'sending', 'delivered', 'givenUp'));

ALTER TABLE webhook_try ENABLE ROW LEVEL SECURITY;
GRANT SELECT ON webhook_try TO app_rls;
GRANT SELECT, INSERT ON webhook_try TO app_system;
GRANT USAGE ON SEQUENCE webhook_try_id_seq TO app_system;
CREATE POLICY system ON webhook_try TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON webhook_try FOR SELECT TO app_rls USING (practice_id = app.practice());
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON webhook_try FOR EACH ROW EXECUTE FUNCTION app.stays();

-- Tells every practice that sees the order and asked for such an event; whoever states the fact need not know of them. Only facts that are there are told, each once.
CREATE FUNCTION app.tell_webhooks(about uuid, events jsonb, now timestamptz) RETURNS integer LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE told integer;
BEGIN
  IF NOT (app.sees_order(about) OR current_setting('role', true) = 'app_system') THEN
    RAISE EXCEPTION 'this order is not seen here' USING ERRCODE = '42501';
  END IF;
  WITH due AS (
    INSERT INTO webhook_delivery (webhook_id, practice_id, order_id, accession, event, event_id, event_at, due_at, created_at)
    SELECT w.id, w.practice_id, o.id, o.accession, e.event, f.id, f.at, now, now
    FROM jsonb_to_recordset(events) AS e(id text, event text) JOIN fact f ON f.order_id = about AND f.id = e.id JOIN orders o ON o.id = about
      JOIN order_access a ON a.order_id = about JOIN webhook w ON w.practice_id = a.practice_id AND w.ended_at IS NULL AND e.event = ANY(w.events)
    ON CONFLICT (webhook_id, event_id) DO NOTHING RETURNING id
  ), rows AS (INSERT INTO outbox (job, payload, dedupe) SELECT 'send-webhook', jsonb_build_object('delivery', id), id::text FROM due RETURNING 1)
  SELECT count(*) INTO told FROM rows;
  IF told > 0 THEN PERFORM pg_notify('outbox', ''); END IF;
  RETURN told;
END $$;

-- A new secret signs from now on, and the one before beside it until then; what was before that is forgotten.
CREATE FUNCTION app.change_webhook_secret(which uuid, fresh text, until timestamptz) RETURNS boolean LANGUAGE sql SECURITY DEFINER SET search_path = public AS $$
  WITH changed AS (UPDATE webhook SET earlier_secret = secret, earlier_until = until, secret = fresh WHERE id = which AND practice_id = app.practice() AND ended_at IS NULL RETURNING 1)
  SELECT EXISTS (SELECT 1 FROM changed)
$$;
REVOKE ALL ON FUNCTION app.tell_webhooks, app.change_webhook_secret FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.tell_webhooks TO app_rls, app_system;
GRANT EXECUTE ON FUNCTION app.change_webhook_secret TO app_rls;
