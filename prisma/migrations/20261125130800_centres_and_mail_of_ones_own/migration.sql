-- Every practice sends to a centre, so whoever reads there sees every practice's packages: only the practice
-- that registered a centre may add its readers. A centre that the scheme brought has none.
ALTER TABLE "centre" ADD COLUMN "registered_by" UUID DEFAULT app.practice();

CREATE FUNCTION app.registered_centre(wanted uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT EXISTS (SELECT 1 FROM centre c WHERE c.id = wanted AND c.registered_by = app.practice()) $$;
REVOKE ALL ON FUNCTION app.registered_centre FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.registered_centre TO app_rls, app_system;

DROP POLICY add ON staff;
CREATE POLICY add ON staff FOR INSERT TO app_rls WITH CHECK (practice_id = app.practice() OR (practice_id IS NULL AND app.registered_centre(centre_id)));
DROP POLICY write ON centre;
CREATE POLICY write ON centre FOR INSERT TO app_rls WITH CHECK (registered_by = app.practice());
-- Nothing changes a centre's row, so nothing may.
DROP POLICY change ON centre;
REVOKE UPDATE ON centre FROM app_rls;

-- A mail about an order is written by who sees the order, whatever practice it names.
DROP POLICY see ON message;
CREATE POLICY see ON message TO app_rls USING (practice_id = app.practice() OR app.sees_order(order_id))
  WITH CHECK (CASE WHEN order_id IS NULL THEN practice_id = app.practice() ELSE app.sees_order(order_id) END);
