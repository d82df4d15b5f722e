-- What became of a sending, a job or a reading, as sentences and what stands in them: said in the language of whoever looks.
-- Rows from before have their text alone.
ALTER TABLE "delivery" ADD COLUMN "sentences" JSONB;
ALTER TABLE "delivery_item" ADD COLUMN "sentences" JSONB, ADD COLUMN "named" JSONB;
ALTER TABLE "problem" ADD COLUMN "sentences" JSONB;
ALTER TABLE "result_left" ADD COLUMN "sentences" JSONB;
GRANT UPDATE (sentences) ON delivery TO app_rls, app_system;
GRANT UPDATE (sentences) ON delivery_item TO app_system;
