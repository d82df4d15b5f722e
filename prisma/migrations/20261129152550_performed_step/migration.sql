-- CreateTable
CREATE TABLE "performed_step" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "console_id" UUID NOT NULL,
    "sop_uid" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "state" TEXT NOT NULL,
    "order_id" UUID,
    "said" JSONB NOT NULL,

    CONSTRAINT "performed_step_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "performed_step_order_id_idx" ON "performed_step"("order_id");

-- CreateIndex
CREATE UNIQUE INDEX "performed_step_practice_id_sop_uid_place_key" ON "performed_step"("practice_id", "sop_uid", "place");

-- What has ended has ended once.
CREATE UNIQUE INDEX performed_step_ends_once ON performed_step (practice_id, sop_uid) WHERE state <> 'inProgress';

-- One practice's own; added to, and never changed.
ALTER TABLE performed_step ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT ON performed_step TO app_rls, app_system;
CREATE POLICY system ON performed_step TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON performed_step TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());

-- The order's page shows it as it is said.
CREATE TRIGGER performed_step_said AFTER INSERT ON performed_step FOR EACH ROW EXECUTE FUNCTION app.part_of_order_changed();
