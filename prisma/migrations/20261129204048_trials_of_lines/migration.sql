-- AlterTable
ALTER TABLE "webhook_delivery" ALTER COLUMN "order_id" DROP NOT NULL,
ALTER COLUMN "accession" DROP NOT NULL;

-- AlterTable
ALTER TABLE "webhook_try" ADD COLUMN     "answer" TEXT,
ADD COLUMN     "detail" TEXT;

-- CreateTable
CREATE TABLE "channel_trial" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "channel_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "answer" TEXT,
    "status" INTEGER,
    "detail" TEXT,
    "answered_at" TIMESTAMPTZ(3),

    CONSTRAINT "channel_trial_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "channel_trial_channel_id_idx" ON "channel_trial"("channel_id");

-- A practice asks about its own channels; the worker answers, once.
ALTER TABLE channel_trial ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT (id, practice_id, channel_id, at, by, by_name) ON channel_trial TO app_rls;
GRANT SELECT, UPDATE (answer, status, detail, answered_at) ON channel_trial TO app_system;
CREATE POLICY system ON channel_trial TO app_system USING (true) WITH CHECK (true);
CREATE POLICY see ON channel_trial FOR SELECT TO app_rls USING (practice_id = app.practice());
CREATE POLICY add ON channel_trial FOR INSERT TO app_rls WITH CHECK (practice_id = app.practice() AND EXISTS (SELECT 1 FROM centre_channel c WHERE c.id = channel_id AND c.practice_id = app.practice()));
CREATE FUNCTION app.answered_once() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' OR OLD.answer IS NOT NULL THEN RAISE EXCEPTION 'a trial stays as it was answered' USING ERRCODE = 'insufficient_privilege'; END IF;
  RETURN NEW;
END $$;
REVOKE ALL ON FUNCTION app.answered_once FROM PUBLIC;
CREATE TRIGGER answered_once BEFORE UPDATE OR DELETE ON channel_trial FOR EACH ROW EXECUTE FUNCTION app.answered_once();

-- A test call is about no order.
ALTER TABLE webhook_delivery ADD CONSTRAINT webhook_delivery_about CHECK ((event = 'test') = (order_id IS NULL) AND (order_id IS NULL) = (accession IS NULL));
CREATE FUNCTION app.test_webhook(which uuid, now timestamptz) RETURNS uuid LANGUAGE sql SECURITY DEFINER SET search_path = public AS $$
  INSERT INTO webhook_delivery (webhook_id, practice_id, event, event_id, event_at, due_at, created_at)
  SELECT w.id, w.practice_id, 'test', gen_random_uuid()::text, now, now, now FROM webhook w
  WHERE w.id = which AND w.practice_id = app.practice() AND w.ended_at IS NULL RETURNING id
$$;
REVOKE ALL ON FUNCTION app.test_webhook FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.test_webhook TO app_rls;
