-- Says which order has changed to whoever listens: ids alone, after the commit. Open pages ask anew, in their own fences.
CREATE FUNCTION app.say_order_changed(changed uuid) RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = public AS $$
  SELECT pg_notify('order_changed', json_build_object(
    'order', changed,
    'practices', (SELECT coalesce(json_agg(DISTINCT practice_id), '[]') FROM order_access WHERE order_id = changed),
    'centres', (SELECT coalesce(json_agg(DISTINCT a.centre_id), '[]') FROM package p JOIN package_access a ON a.package_id = p.id WHERE p.order_id = changed)
  )::text)
$$;

CREATE FUNCTION app.order_changed() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  PERFORM app.say_order_changed(NEW.id);
  RETURN NULL;
END $$;
CREATE TRIGGER order_changed AFTER UPDATE OF version ON orders FOR EACH ROW EXECUTE FUNCTION app.order_changed();

-- What became of a mail or a paper stands on the order's page without being a fact of it.
CREATE FUNCTION app.part_of_order_changed() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  IF NEW.order_id IS NOT NULL THEN PERFORM app.say_order_changed(NEW.order_id); END IF;
  RETURN NULL;
END $$;
CREATE TRIGGER message_changed AFTER UPDATE OF state ON message FOR EACH ROW WHEN (OLD.state IS DISTINCT FROM NEW.state) EXECUTE FUNCTION app.part_of_order_changed();

REVOKE ALL ON FUNCTION app.say_order_changed, app.order_changed, app.part_of_order_changed FROM PUBLIC;
CREATE TRIGGER document_changed AFTER INSERT OR UPDATE OF pdf_sha, state ON document FOR EACH ROW EXECUTE FUNCTION app.part_of_order_changed();
