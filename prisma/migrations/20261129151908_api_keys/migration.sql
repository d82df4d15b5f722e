-- CreateTable
CREATE TABLE "api_key" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "scopes" TEXT[],
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "last_used_at" TIMESTAMPTZ(3),
    "ended_at" TIMESTAMPTZ(3),
    "ended_by_name" TEXT,

    CONSTRAINT "api_key_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "api_key_hash_key" ON "api_key"("hash");

-- CreateIndex
CREATE INDEX "api_key_practice_id_idx" ON "api_key"("practice_id");

-- One practice's own. What is kept of a key cannot be used as one, and is shown to nobody.
ALTER TABLE api_key ENABLE ROW LEVEL SECURITY;
GRANT SELECT (id, practice_id, name, scopes, at, by, by_name, last_used_at, ended_at, ended_by_name), INSERT, UPDATE (ended_at, ended_by_name) ON api_key TO app_rls;
GRANT SELECT, INSERT ON api_key TO app_system;
CREATE POLICY system ON api_key TO app_system USING (true) WITH CHECK (true);
CREATE POLICY own ON api_key TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
ALTER TABLE api_key ADD CONSTRAINT api_key_scopes CHECK (cardinality(scopes) > 0 AND scopes <@ ARRAY['orders', 'results', 'owners']);

-- The door of other programs: which practice a key acts for, and what it may read. Its last use is noted to the minute.
CREATE FUNCTION app.use_api_key(given text, now timestamptz) RETURNS TABLE (id uuid, practice uuid, name text, scopes text[]) LANGUAGE sql SECURITY DEFINER SET search_path = public AS $$
  WITH used AS (UPDATE api_key k SET last_used_at = now WHERE k.hash = given AND k.ended_at IS NULL AND (k.last_used_at IS NULL OR k.last_used_at < now - interval '1 minute'))
  SELECT k.id, k.practice_id, k.name, k.scopes FROM api_key k WHERE k.hash = given AND k.ended_at IS NULL
$$;
REVOKE ALL ON FUNCTION app.use_api_key FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.use_api_key TO cotyla_api;
