-- A reader that a practice enters gets an account nobody can use until somebody behind the centre's own address has
-- chosen its password: a practice must not be able to look into another's packages by entering a reader.
ALTER TABLE "link" ADD COLUMN "staff_id" UUID, ALTER COLUMN "practice_id" DROP NOT NULL, ALTER COLUMN "order_id" DROP NOT NULL;

CREATE FUNCTION app.join_staff(hash text, new_password_hash text) RETURNS uuid LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE joined uuid;
BEGIN
  UPDATE link SET revoked_at = now() WHERE token_hash = hash AND kind = 'join' AND revoked_at IS NULL AND expires_at > now() RETURNING staff_id INTO joined;
  IF joined IS NOT NULL THEN
    UPDATE staff SET password_hash = new_password_hash, active = true WHERE id = joined;
  END IF;
  RETURN joined;
END $$;
REVOKE ALL ON FUNCTION app.join_staff FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.join_staff TO cotyla_api;
