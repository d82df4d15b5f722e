-- Most rows that a practice reads are its own, and that is quickly told; whether an order was shared is not.
-- Of two policies the database may ask the slower one first, for every row; within one it keeps the order.

DO $$ DECLARE t text; shared text; BEGIN
  FOREACH t IN ARRAY ARRAY['dog', 'person', 'dog_name', 'dog_identifier', 'stud_book_number', 'dog_role'] LOOP
    shared := CASE t WHEN 'dog' THEN 'app.sees_dog(id)' WHEN 'person' THEN 'app.sees_person(id)' ELSE 'app.sees_dog(dog_id)' END;
    EXECUTE format('DROP POLICY own ON %I', t);
    EXECUTE format('DROP POLICY shared ON %I', t);
    EXECUTE format('CREATE POLICY see ON %I FOR SELECT TO app_rls USING (practice_id = app.practice() OR %s)', t, shared);
    EXECUTE format('CREATE POLICY add ON %I FOR INSERT TO app_rls WITH CHECK (practice_id = app.practice())', t);
    EXECUTE format('CREATE POLICY change ON %I FOR UPDATE TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice())', t);
  END LOOP;
END $$;
