-- AlterTable
ALTER TABLE "console" ADD COLUMN     "port" INTEGER;

-- CreateTable
CREATE TABLE "commitment" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "console_id" UUID NOT NULL,
    "transaction_uid" TEXT NOT NULL,
    "asked" JSONB NOT NULL,
    "called" TEXT NOT NULL,
    "address" INET NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "checked_at" TIMESTAMPTZ(3),
    "failed" JSONB,
    "told_at" TIMESTAMPTZ(3),

    CONSTRAINT "commitment_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "commitment_practice_id_idx" ON "commitment"("practice_id");

-- CreateIndex
CREATE INDEX "commitment_console_id_at_idx" ON "commitment"("console_id", "at");

ALTER TABLE console ADD CONSTRAINT console_port CHECK (port BETWEEN 1 AND 65535);

-- One practice's own. What was asked stays as it was asked; it is looked into once, and told once.
ALTER TABLE commitment ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE (checked_at, failed, told_at) ON commitment TO app_rls, app_system;
CREATE POLICY system ON commitment TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON commitment TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());

CREATE FUNCTION app.commitment_once() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE'
    OR OLD.checked_at IS NOT NULL AND (NEW.checked_at, NEW.failed) IS DISTINCT FROM (OLD.checked_at, OLD.failed)
    OR OLD.told_at IS NOT NULL AND NEW.told_at IS DISTINCT FROM OLD.told_at THEN
    RAISE EXCEPTION 'what a machine was told stays' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER commitment_once BEFORE UPDATE OR DELETE ON commitment FOR EACH ROW EXECUTE FUNCTION app.commitment_once();
