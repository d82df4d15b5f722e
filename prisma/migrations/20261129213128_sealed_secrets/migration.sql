-- Secrets are sealed by a key that the database does not have, and say by which; those that stand here in plain text are sealed by the worker at its next start.
ALTER TABLE "centre_channel_secret" ADD COLUMN "key_id" TEXT GENERATED ALWAYS AS (CASE WHEN secret LIKE 'sealed.v1.%' THEN split_part(secret, '.', 3) END) STORED;
ALTER TABLE "centre_key" ADD COLUMN "key_id" TEXT GENERATED ALWAYS AS (CASE WHEN secret LIKE 'sealed.v1.%' THEN split_part(secret, '.', 3) END) STORED;
ALTER TABLE "webhook" ADD COLUMN "key_id" TEXT GENERATED ALWAYS AS (CASE WHEN secret LIKE 'sealed.v1.%' THEN split_part(secret, '.', 3) END) STORED;

-- A page may say that a secret can no longer be read, and knows no more of it than by which key it was sealed.
GRANT SELECT (channel_id, key_id) ON centre_channel_secret TO app_rls;
CREATE POLICY see ON centre_channel_secret FOR SELECT TO app_rls USING (EXISTS (SELECT 1 FROM centre_channel c WHERE c.id = channel_id AND c.practice_id = app.practice()));
GRANT SELECT (key_id) ON centre_key, webhook TO app_rls;

-- The worker seals what stands in plain text, and anew what was sealed by a key before.
GRANT UPDATE (secret) ON centre_channel_secret, centre_key TO app_system;
GRANT UPDATE (secret, earlier_secret) ON webhook TO app_system;

-- An ended key stays as it is, but for its secret being sealed.
CREATE OR REPLACE FUNCTION app.said_once() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN RAISE EXCEPTION 'what came stays' USING ERRCODE = 'insufficient_privilege'; END IF;
  IF TG_TABLE_NAME = 'centre_key' AND (to_jsonb(NEW) - 'secret' - 'key_id') = (to_jsonb(OLD) - 'secret' - 'key_id') AND to_jsonb(NEW)->>'secret' LIKE 'sealed.v1.%' THEN RETURN NEW; END IF;
  IF TG_TABLE_NAME = 'result_left' AND to_jsonb(OLD)->>'settled_at' IS NOT NULL OR TG_TABLE_NAME = 'result_delivery' AND to_jsonb(OLD)->>'answer' IS NOT NULL OR TG_TABLE_NAME = 'centre_key' AND to_jsonb(OLD)->>'ended_at' IS NOT NULL THEN
    RAISE EXCEPTION 'this has been said already' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;
