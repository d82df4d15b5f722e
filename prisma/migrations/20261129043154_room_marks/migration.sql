-- AlterTable
ALTER TABLE "image" ADD COLUMN     "column_mm" DOUBLE PRECISION,
ADD COLUMN     "row_mm" DOUBLE PRECISION;

-- CreateTable
CREATE TABLE "room_mark" (
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "exposure" TEXT NOT NULL,
    "picture" JSONB NOT NULL,
    "marks" JSONB NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "room_mark_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "room_mark_order_id_idx" ON "room_mark"("order_id");

-- Whoever sees the order adds and reads; nobody changes or removes a row.
ALTER TABLE room_mark ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE, DELETE ON room_mark TO app_system;
CREATE POLICY system ON room_mark TO app_system USING (true) WITH CHECK (true);
GRANT SELECT, INSERT ON room_mark TO app_rls;
CREATE POLICY see ON room_mark FOR SELECT TO app_rls USING (app.sees_order(order_id));
CREATE POLICY add ON room_mark FOR INSERT TO app_rls WITH CHECK (app.sees_order(order_id));
