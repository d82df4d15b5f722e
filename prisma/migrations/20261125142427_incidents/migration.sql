-- CreateTable
CREATE TABLE "incident" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "order_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "study_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "opened_at" TIMESTAMPTZ(3) NOT NULL,
    "opened_by" TEXT NOT NULL,
    "closed_at" TIMESTAMPTZ(3),
    "closed_by" TEXT,
    "words" TEXT,

    CONSTRAINT "incident_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "incident_order_id_idx" ON "incident"("order_id");

-- CreateIndex
CREATE INDEX "incident_practice_id_closed_at_idx" ON "incident"("practice_id", "closed_at");

-- The order's own practice closes what the program has opened; nobody changes anything else of it.
ALTER TABLE incident ENABLE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE, DELETE ON incident TO app_system;
CREATE POLICY system ON incident TO app_system USING (true) WITH CHECK (true);
GRANT SELECT, INSERT, UPDATE (closed_at, closed_by, words) ON incident TO app_rls;
CREATE POLICY see ON incident FOR SELECT TO app_rls USING (practice_id = app.practice() OR app.sees_order(order_id));
CREATE POLICY add ON incident FOR INSERT TO app_rls WITH CHECK (app.sees_order(order_id));
CREATE POLICY close ON incident FOR UPDATE TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());

-- For the scheme lead: kind and days, no dog, no owner, and none of the practice's own words.
CREATE FUNCTION app.scheme_incidents(wanted uuid) RETURNS jsonb LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public AS $$
  SELECT COALESCE(jsonb_agg(jsonb_build_object('accession', o.accession, 'practice', p.name, 'study', s.protocol, 'kind', i.kind, 'openedOn', (i.opened_at AT TIME ZONE p.zone)::date, 'closedOn', (i.closed_at AT TIME ZONE p.zone)::date)
      ORDER BY i.closed_at NULLS FIRST, i.opened_at, o.accession), '[]')
  FROM incident i JOIN orders o ON o.id = i.order_id JOIN practice p ON p.id = i.practice_id LEFT JOIN study s ON s.id = i.study_id WHERE p.scheme_id = wanted
$$;
REVOKE ALL ON FUNCTION app.scheme_incidents FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.scheme_incidents TO app_rls, app_system;
