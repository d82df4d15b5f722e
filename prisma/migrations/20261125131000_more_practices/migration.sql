-- Whoever sets a server up leads its scheme until somebody else does: a scheme needs somebody who adds practices.
CREATE OR REPLACE FUNCTION app.first_run(scheme_row jsonb, practice_row jsonb, manager_row jsonb) RETURNS uuid LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE scheme_id uuid; practice_id uuid; manager uuid;
BEGIN
  LOCK TABLE scheme IN EXCLUSIVE MODE;
  IF EXISTS (SELECT 1 FROM scheme) THEN RETURN NULL; END IF;
  INSERT INTO scheme (name, country, currency, zone, signing_key, public_key)
    VALUES (scheme_row->>'name', scheme_row->>'country', scheme_row->>'currency', scheme_row->>'zone', scheme_row->>'signingKey', scheme_row->>'publicKey') RETURNING id INTO scheme_id;
  INSERT INTO practice (scheme_id, name, place, address, phone, email, zone, letters, policy, prices)
    VALUES (scheme_id, practice_row->>'name', practice_row->>'place', practice_row->>'address', practice_row->>'phone', practice_row->>'email', scheme_row->>'zone', practice_row->>'letters', practice_row->'policy', practice_row->'prices') RETURNING id INTO practice_id;
  INSERT INTO staff (scheme_id, practice_id, name, email, password_hash, roles)
    VALUES (scheme_id, practice_id, manager_row->>'name', manager_row->>'email', manager_row->>'passwordHash', ARRAY['manager', 'desk', 'lead']) RETURNING id INTO manager;
  RETURN manager;
END $$;

-- A further practice, entered by the scheme's lead. Its manager's account is shut until they have chosen a password
-- behind a link that goes to the practice's own address.
CREATE FUNCTION app.add_practice(lead uuid, practice_row jsonb, manager_row jsonb) RETURNS TABLE (practice uuid, manager uuid) LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE of_scheme uuid;
BEGIN
  SELECT s.scheme_id INTO of_scheme FROM staff s WHERE s.id = lead AND s.active AND 'lead' = ANY(s.roles);
  IF of_scheme IS NULL THEN RAISE EXCEPTION 'only the lead of a scheme adds practices' USING ERRCODE = '42501'; END IF;
  INSERT INTO practice (scheme_id, name, place, address, phone, email, zone, letters, policy, prices)
    SELECT of_scheme, practice_row->>'name', practice_row->>'place', practice_row->>'address', practice_row->>'phone', practice_row->>'email', sc.zone, practice_row->>'letters',
      jsonb_build_object('letters', jsonb_build_object('mode', 'each'), 'quiet', jsonb_build_object('from', 20, 'to', 8), 'schemeName', sc.name),
      jsonb_build_object('currency', sc.currency, 'taxPercent', 0, 'sedationMinor', 0, 'radiographMinor', 0, 'sendingMinor', 0)
    FROM scheme sc WHERE sc.id = of_scheme RETURNING id INTO practice;
  INSERT INTO staff (scheme_id, practice_id, name, email, password_hash, roles, active)
    VALUES (of_scheme, practice, manager_row->>'name', lower(manager_row->>'email'), manager_row->>'passwordHash', ARRAY['manager', 'desk'], false) RETURNING id INTO manager;
  RETURN NEXT;
END $$;
REVOKE ALL ON FUNCTION app.add_practice FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.add_practice TO cotyla_api;
