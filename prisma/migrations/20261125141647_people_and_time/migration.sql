-- CreateTable
CREATE TABLE "authority" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "agent_id" UUID NOT NULL,
    "owner_id" UUID NOT NULL,
    "covers" TEXT[],
    "valid_from" DATE NOT NULL,
    "valid_until" DATE NOT NULL,
    "evidence" TEXT NOT NULL,
    "ended_at" TIMESTAMPTZ(3),
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "authority_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dog_merge" (
    "gone_id" UUID NOT NULL,
    "kept_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "animal_id" TEXT NOT NULL,
    "why" TEXT NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "dog_merge_pkey" PRIMARY KEY ("gone_id")
);

-- CreateTable
CREATE TABLE "centre_closure" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "centre_id" UUID NOT NULL,
    "closed_from" DATE NOT NULL,
    "closed_until" DATE,
    "how" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "centre_closure_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "authority_dog_id_idx" ON "authority"("dog_id");

-- CreateIndex
CREATE UNIQUE INDEX "dog_merge_animal_id_key" ON "dog_merge"("animal_id");

-- CreateIndex
CREATE INDEX "dog_merge_kept_id_idx" ON "dog_merge"("kept_id");

-- CreateIndex
CREATE INDEX "centre_closure_practice_id_centre_id_idx" ON "centre_closure"("practice_id", "centre_id");

-- A practice's own, as everything in its register; what belongs to a dog is read with an order that was shared.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['authority', 'dog_merge', 'centre_closure'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %I TO app_system', t);
    EXECUTE format('CREATE POLICY system ON %I TO app_system USING (true) WITH CHECK (true)', t);
    EXECUTE format('GRANT SELECT, INSERT ON %I TO app_rls', t);
    EXECUTE format('CREATE POLICY add ON %I FOR INSERT TO app_rls WITH CHECK (practice_id = app.practice())', t);
  END LOOP;
END $$;
CREATE POLICY see ON authority FOR SELECT TO app_rls USING (practice_id = app.practice() OR app.sees_dog(dog_id));
CREATE POLICY see ON dog_merge FOR SELECT TO app_rls USING (practice_id = app.practice() OR app.sees_dog(kept_id));
CREATE POLICY see ON centre_closure FOR SELECT TO app_rls USING (practice_id = app.practice());
-- An authority is ended, a tombstone follows its dog; the rest of a row stays as it was written.
GRANT UPDATE (ended_at, dog_id) ON authority TO app_rls;
GRANT UPDATE (kept_id) ON dog_merge TO app_rls;
CREATE POLICY change ON authority FOR UPDATE TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());
CREATE POLICY change ON dog_merge FOR UPDATE TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice());

-- An order goes to another practice for good, with its dog and the people around it; asked for by its own practice
-- alone. The practice that gives it away still sees what it has done.
CREATE FUNCTION app.hand_over(handed uuid, to_practice uuid) RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
DECLARE from_practice uuid := app.practice(); its_dog uuid;
BEGIN
  SELECT dog_id INTO its_dog FROM orders WHERE id = handed AND practice_id = from_practice FOR UPDATE;
  IF its_dog IS NULL THEN RAISE EXCEPTION 'only the practice of an order hands it over' USING ERRCODE = '42501'; END IF;
  IF NOT EXISTS (SELECT 1 FROM practice WHERE id = to_practice AND id <> from_practice) THEN RAISE EXCEPTION 'there is no such practice' USING ERRCODE = '42501'; END IF;
  UPDATE order_access SET why = 'former' WHERE order_id = handed AND practice_id = from_practice;
  INSERT INTO order_access (order_id, practice_id, why) VALUES (handed, to_practice, 'home') ON CONFLICT (order_id, practice_id) DO UPDATE SET why = 'home';
  UPDATE orders SET practice_id = to_practice WHERE id = handed;
  UPDATE study SET practice_id = to_practice WHERE order_id = handed;
  UPDATE package SET practice_id = to_practice WHERE order_id = handed;
  UPDATE link SET practice_id = to_practice WHERE order_id = handed AND kind = 'owner';
  UPDATE person SET practice_id = to_practice WHERE practice_id = from_practice AND id IN (SELECT person_id FROM dog_role WHERE dog_id = its_dog);
  UPDATE dog SET practice_id = to_practice WHERE id = its_dog AND practice_id = from_practice;
  UPDATE dog_name SET practice_id = to_practice WHERE dog_id = its_dog AND practice_id = from_practice;
  UPDATE dog_identifier SET practice_id = to_practice WHERE dog_id = its_dog AND practice_id = from_practice;
  UPDATE stud_book_number SET practice_id = to_practice WHERE dog_id = its_dog AND practice_id = from_practice;
  UPDATE dog_role SET practice_id = to_practice WHERE dog_id = its_dog AND practice_id = from_practice;
  UPDATE authority SET practice_id = to_practice WHERE dog_id = its_dog AND practice_id = from_practice;
  UPDATE dog_merge SET practice_id = to_practice WHERE kept_id = its_dog AND practice_id = from_practice;
END $$;
REVOKE ALL ON FUNCTION app.hand_over FROM PUBLIC;
GRANT EXECUTE ON FUNCTION app.hand_over TO app_rls;
