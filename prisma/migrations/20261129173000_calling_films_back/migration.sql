-- Films that one practice sent may be called back by another that the order has moved to: by the way on which they went, and for nothing else.
CREATE FUNCTION app.calls_back(about uuid, sent text, practice uuid, centre uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS
$$ SELECT app.sees_order(about) AND EXISTS (SELECT 1 FROM delivery d WHERE d.send_id = sent::uuid AND d.order_id = about AND d.practice_id = practice AND d.centre_id = centre AND d.note IS NULL) $$;
REVOKE ALL ON FUNCTION app.calls_back FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.calls_back TO app_rls;

DROP POLICY see ON delivery;
CREATE POLICY see ON delivery FOR SELECT TO app_rls USING (app.sees_order(order_id));
CREATE POLICY change ON delivery FOR UPDATE TO app_rls USING (app.sees_order(order_id)) WITH CHECK (app.sees_order(order_id));
CREATE POLICY add ON delivery FOR INSERT TO app_rls WITH CHECK (app.sees_order(order_id) AND (practice_id = app.practice() OR (note IS NOT NULL AND app.calls_back(order_id, note->>'of', practice_id, centre_id))));
