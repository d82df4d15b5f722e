-- CreateTable
CREATE TABLE "centre_channel" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "centre_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "address" TEXT,
    "bucket" TEXT,
    "region" TEXT,
    "account" TEXT,
    "has_secret" BOOLEAN NOT NULL DEFAULT false,
    "seq" BIGSERIAL NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "centre_channel_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "centre_channel_secret" (
    "channel_id" UUID NOT NULL,
    "secret" TEXT NOT NULL,

    CONSTRAINT "centre_channel_secret_pkey" PRIMARY KEY ("channel_id")
);

-- CreateTable
CREATE TABLE "delivery" (
    "send_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "package_id" UUID NOT NULL,
    "study_id" UUID NOT NULL,
    "centre_id" UUID NOT NULL,
    "channel_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "note" JSONB,
    "state" TEXT NOT NULL DEFAULT 'open',
    "words" TEXT,
    "zip_sha" TEXT,
    "touched_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "delivery_pkey" PRIMARY KEY ("send_id")
);

-- CreateTable
CREATE TABLE "delivery_item" (
    "send_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "order_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "image" TEXT,
    "sop_class" TEXT,
    "sop_uid" TEXT,
    "study_uid" TEXT,
    "series_uid" TEXT,
    "sent_sha" TEXT,
    "size" INTEGER,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "words" TEXT,
    "claimed_at" TIMESTAMPTZ(3),
    "done_at" TIMESTAMPTZ(3),

    CONSTRAINT "delivery_item_pkey" PRIMARY KEY ("send_id","place")
);

-- CreateIndex
CREATE INDEX "centre_channel_practice_id_centre_id_idx" ON "centre_channel"("practice_id", "centre_id");

-- CreateIndex
CREATE INDEX "delivery_order_id_idx" ON "delivery"("order_id");

-- CreateIndex
CREATE INDEX "delivery_item_order_id_idx" ON "delivery_item"("order_id");

-- CreateTable
CREATE TABLE "delivery_key" (
    "practice_id" UUID NOT NULL,
    "centre_id" UUID NOT NULL,
    "key" TEXT NOT NULL,

    CONSTRAINT "delivery_key_pkey" PRIMARY KEY ("practice_id","centre_id")
);

ALTER TABLE delivery_key ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT ON delivery_key TO app_system;
CREATE POLICY system ON delivery_key TO app_system USING (true) WITH CHECK (true);

-- A practice's own way to a centre: another practice neither sees it nor can turn it elsewhere. The secret is read by the worker alone.
ALTER TABLE centre_channel ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT ON centre_channel TO app_rls;
GRANT USAGE ON SEQUENCE centre_channel_seq_seq TO app_rls;
GRANT SELECT ON centre_channel TO app_system;
CREATE POLICY system ON centre_channel TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON centre_channel TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON centre_channel FOR EACH ROW EXECUTE FUNCTION app.stays();

ALTER TABLE centre_channel_secret ENABLE ROW LEVEL SECURITY;
GRANT INSERT ON centre_channel_secret TO app_rls;
GRANT SELECT ON centre_channel_secret TO app_system;
CREATE POLICY system ON centre_channel_secret TO app_system USING (true) WITH CHECK (true);
CREATE POLICY add ON centre_channel_secret FOR INSERT TO app_rls WITH CHECK (EXISTS (SELECT 1 FROM centre_channel c WHERE c.id = channel_id AND c.practice_id = app.practice()));

ALTER TABLE delivery ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE (state, words, touched_at) ON delivery TO app_rls;
GRANT SELECT, UPDATE (state, words, touched_at, zip_sha) ON delivery TO app_system;
CREATE POLICY system ON delivery TO app_system USING (true) WITH CHECK (true);
CREATE POLICY see ON delivery TO app_rls USING (app.sees_order(order_id)) WITH CHECK (app.sees_order(order_id) AND practice_id = app.practice());
-- The centre opens what it was sent, also when that was packed for it.
CREATE POLICY read ON delivery FOR SELECT TO app_rls USING (centre_id = app.centre() AND app.centre_reads(package_id));

ALTER TABLE delivery_item ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT ON delivery_item TO app_rls;
GRANT SELECT, UPDATE (sop_class, sop_uid, study_uid, series_uid, sent_sha, size, state, words, claimed_at, done_at) ON delivery_item TO app_system;
CREATE POLICY system ON delivery_item TO app_system USING (true) WITH CHECK (true);
CREATE POLICY see ON delivery_item TO app_rls USING (app.sees_order(order_id)) WITH CHECK (app.sees_order(order_id));

-- What is on its way is swept for; the rest is history.
CREATE INDEX delivery_open ON delivery (touched_at) WHERE state = 'open';

CREATE TRIGGER delivery_changed AFTER UPDATE OF state, words ON delivery FOR EACH ROW EXECUTE FUNCTION app.part_of_order_changed();
CREATE TRIGGER delivery_item_changed AFTER UPDATE OF state ON delivery_item FOR EACH ROW WHEN (OLD.state IS DISTINCT FROM NEW.state) EXECUTE FUNCTION app.part_of_order_changed();
