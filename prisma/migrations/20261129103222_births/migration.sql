-- CreateTable
CREATE TABLE "breed_births" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "seq" BIGSERIAL NOT NULL,
    "scheme_id" UUID NOT NULL,
    "breed" TEXT NOT NULL,
    "year" INTEGER NOT NULL,
    "born" INTEGER,
    "source" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "breed_births_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "breed_births_scheme_id_breed_year_seq_idx" ON "breed_births"("scheme_id", "breed", "year", "seq");

-- Nobody reads or writes it but the two functions below and the worker; what was written stays.
ALTER TABLE breed_births ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT ON breed_births TO app_system;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO app_system;
CREATE POLICY system ON breed_births TO app_system USING (true) WITH CHECK (true);
CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON breed_births FOR EACH ROW EXECUTE FUNCTION app.stays();
ALTER TABLE breed_births ADD CONSTRAINT breed_births_pups CHECK (born >= 0);

CREATE FUNCTION app.say_births(lead uuid, of_breed text, of_year int, pups int, of_source text, said_at timestamptz) RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
BEGIN
  INSERT INTO breed_births (scheme_id, breed, year, born, source, at, by, by_name)
    SELECT s.scheme_id, lower(btrim(of_breed)), of_year, pups, of_source, said_at, s.id::text, s.name FROM staff s WHERE s.id = lead AND s.active AND 'lead' = ANY(s.roles);
  IF NOT FOUND THEN RAISE EXCEPTION 'only the lead of a scheme says how many pups were born' USING ERRCODE = '42501'; END IF;
END $$;

-- Everything that was said of a breed, the last word on a year first.
CREATE FUNCTION app.breed_births(of_scheme uuid, of_breed text) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT COALESCE(jsonb_agg(jsonb_build_object('year', b.year, 'born', b.born, 'source', b.source, 'day', (b.at AT TIME ZONE sc.zone)::date, 'byName', b.by_name) ORDER BY b.year DESC, b.seq DESC), '[]')
  FROM breed_births b JOIN scheme sc ON sc.id = b.scheme_id WHERE b.scheme_id = of_scheme AND b.breed = lower(btrim(of_breed))
$$;

REVOKE ALL ON FUNCTION app.say_births, app.breed_births FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.say_births, app.breed_births TO app_rls, app_system;
