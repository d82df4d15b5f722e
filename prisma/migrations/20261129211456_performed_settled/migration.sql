-- AlterTable
ALTER TABLE "performed_step" ADD COLUMN     "why" TEXT;

-- CreateTable
CREATE TABLE "performed_settled" (
    "practice_id" UUID NOT NULL,
    "sop_uid" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "order_id" UUID,
    "why" TEXT,

    CONSTRAINT "performed_settled_pkey" PRIMARY KEY ("practice_id","sop_uid")
);

-- CreateIndex
CREATE INDEX "performed_settled_order_id_idx" ON "performed_settled"("order_id");

-- One practice's own; said once, and never changed.
ALTER TABLE performed_settled ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT ON performed_settled TO app_rls, app_system;
CREATE POLICY system ON performed_settled TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON performed_settled TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
ALTER TABLE performed_settled ADD CONSTRAINT performed_settled_how CHECK ((order_id IS NULL) <> (why IS NULL));
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON performed_settled FOR EACH ROW EXECUTE FUNCTION app.stays();

-- Those that wait are looked for; the tray and the order show them as they change.
CREATE INDEX performed_step_without_order ON performed_step (practice_id, sop_uid) WHERE order_id IS NULL;
CREATE TRIGGER tray_changed AFTER INSERT ON performed_step FOR EACH ROW WHEN (NEW.order_id IS NULL) EXECUTE FUNCTION app.tray_changed();
CREATE TRIGGER tray_changed AFTER INSERT ON performed_settled FOR EACH ROW EXECUTE FUNCTION app.tray_changed();
CREATE TRIGGER performed_settled_said AFTER INSERT ON performed_settled FOR EACH ROW EXECUTE FUNCTION app.part_of_order_changed();
