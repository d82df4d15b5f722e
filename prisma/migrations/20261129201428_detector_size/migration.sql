-- CreateTable
CREATE TABLE "detector_size" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "equipment_id" UUID NOT NULL,
    "pixel_mm" DOUBLE PRECISION,
    "seq" BIGSERIAL NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "detector_size_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "detector_size_equipment_id_idx" ON "detector_size"("equipment_id");

-- Said by a practice's manager of its own device; what was said before stays.
ALTER TABLE detector_size ADD CONSTRAINT detector_size_possible CHECK (pixel_mm BETWEEN 0.02 AND 0.5);
ALTER TABLE detector_size ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT ON detector_size TO app_rls, app_system;
GRANT USAGE ON SEQUENCE detector_size_seq_seq TO app_rls, app_system;
CREATE POLICY system ON detector_size TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON detector_size TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice() AND EXISTS (SELECT 1 FROM equipment e WHERE e.id = equipment_id AND e.practice_id = app.practice()));
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON detector_size FOR EACH ROW EXECUTE FUNCTION app.stays();
