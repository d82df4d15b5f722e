-- CreateTable
CREATE TABLE "group_booking" (
    "id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "caller_id" UUID NOT NULL,
    "payer_id" UUID NOT NULL,
    "by" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "day" DATE NOT NULL,
    "litter" BOOLEAN NOT NULL,
    "whole" BOOLEAN NOT NULL,
    "born" INTEGER,
    "alive" INTEGER,
    "dam" TEXT,

    CONSTRAINT "group_booking_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "group_booking_dog" (
    "group_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "order_id" UUID,
    "problem" JSONB,

    CONSTRAINT "group_booking_dog_pkey" PRIMARY KEY ("group_id","dog_id")
);

-- CreateTable
CREATE TABLE "waiting_entry" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "from_day" DATE,
    "by" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "looked_at" TIMESTAMPTZ(3) NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "done_at" TIMESTAMPTZ(3),

    CONSTRAINT "waiting_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "slot_offer" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "entry_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "slot" JSONB NOT NULL,
    "offered_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'open',
    "answered_at" TIMESTAMPTZ(3),

    CONSTRAINT "slot_offer_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "group_booking_practice_id_at_idx" ON "group_booking"("practice_id", "at");

-- CreateIndex
CREATE INDEX "group_booking_dog_order_id_idx" ON "group_booking_dog"("order_id");

-- CreateIndex
CREATE INDEX "waiting_entry_practice_id_state_created_at_idx" ON "waiting_entry"("practice_id", "state", "created_at");

-- CreateIndex
CREATE INDEX "waiting_entry_order_id_idx" ON "waiting_entry"("order_id");

-- CreateIndex
CREATE INDEX "slot_offer_entry_id_idx" ON "slot_offer"("entry_id");

-- CreateIndex
CREATE INDEX "slot_offer_state_expires_at_idx" ON "slot_offer"("state", "expires_at");

-- Of one practice alone: also a practice that an order was referred to sees nothing of its litter or its place in line.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['group_booking', 'group_booking_dog', 'waiting_entry', 'slot_offer'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %I TO app_system', t);
    EXECUTE format('CREATE POLICY system ON %I TO app_system USING (true) WITH CHECK (true)', t);
    EXECUTE format('GRANT SELECT, INSERT ON %I TO app_rls', t);
    EXECUTE format('CREATE POLICY own ON %I TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice())', t);
  END LOOP;
END $$;
GRANT UPDATE ON waiting_entry, slot_offer TO app_rls;

-- One place in line for a visit, one open offer for a place.
CREATE UNIQUE INDEX waiting_entry_once ON waiting_entry (visit_id) WHERE state = 'waiting';
CREATE UNIQUE INDEX slot_offer_once ON slot_offer (entry_id) WHERE state = 'open';
