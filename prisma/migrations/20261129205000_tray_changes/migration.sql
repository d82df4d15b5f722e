-- An image that fits no order is told to the open pages of its practice: that something changed, and nothing of what.
CREATE FUNCTION app.tray_changed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('tray_changed', NEW.practice_id::text);
  RETURN NULL;
END $$;
CREATE TRIGGER tray_changed AFTER INSERT OR UPDATE OF preview_sha, settled_at ON received_image FOR EACH ROW WHEN (NEW.order_id IS NULL) EXECUTE FUNCTION app.tray_changed();
