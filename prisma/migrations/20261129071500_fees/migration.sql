-- CreateTable
CREATE TABLE "fee_entry" (
    "id" UUID NOT NULL,
    "seq" BIGSERIAL NOT NULL,
    "practice_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "amount_minor" INTEGER NOT NULL,
    "currency" TEXT NOT NULL,
    "why" TEXT,
    "estimate_id" TEXT,
    "estimate_line" INTEGER,
    "reverses" UUID,
    "day" DATE,
    "how" TEXT,
    "person_id" UUID,
    "receipt" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "fee_entry_pkey" PRIMARY KEY ("practice_id","id")
);

-- CreateTable
CREATE TABLE "fee_statement" (
    "id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "up_to" BIGINT NOT NULL,
    "told" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "fee_statement_pkey" PRIMARY KEY ("practice_id","id")
);

-- CreateTable
CREATE TABLE "centre_bill" (
    "id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "centre_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "day" DATE NOT NULL,
    "due" DATE,
    "currency" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "centre_bill_pkey" PRIMARY KEY ("practice_id","id")
);

-- CreateTable
CREATE TABLE "centre_bill_line" (
    "id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "bill_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "reference" TEXT NOT NULL,
    "study" TEXT NOT NULL,
    "amount_minor" INTEGER NOT NULL,

    CONSTRAINT "centre_bill_line_pkey" PRIMARY KEY ("practice_id","id")
);

-- CreateTable
CREATE TABLE "centre_bill_event" (
    "id" UUID NOT NULL,
    "seq" BIGSERIAL NOT NULL,
    "practice_id" UUID NOT NULL,
    "bill_id" UUID NOT NULL,
    "line_id" UUID,
    "type" TEXT NOT NULL,
    "study_id" UUID,
    "day" DATE,
    "words" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,

    CONSTRAINT "centre_bill_event_pkey" PRIMARY KEY ("practice_id","id")
);

-- CreateIndex
CREATE INDEX "fee_entry_practice_id_order_id_idx" ON "fee_entry"("practice_id", "order_id");

-- CreateIndex
CREATE UNIQUE INDEX "fee_entry_practice_id_reverses_key" ON "fee_entry"("practice_id", "reverses");

-- CreateIndex
CREATE INDEX "fee_statement_practice_id_order_id_idx" ON "fee_statement"("practice_id", "order_id");

-- CreateIndex
CREATE INDEX "centre_bill_practice_id_centre_id_idx" ON "centre_bill"("practice_id", "centre_id");

-- CreateIndex
CREATE UNIQUE INDEX "centre_bill_line_practice_id_bill_id_place_key" ON "centre_bill_line"("practice_id", "bill_id", "place");

-- CreateIndex
CREATE INDEX "centre_bill_event_practice_id_bill_id_idx" ON "centre_bill_event"("practice_id", "bill_id");

-- What was charged, paid and billed stays as it was written, and is one practice's own: neither a practice that an
-- order was referred to nor a centre sees anything of it.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['fee_entry', 'fee_statement', 'centre_bill', 'centre_bill_line', 'centre_bill_event'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('GRANT SELECT, INSERT ON %I TO app_rls, app_system', t);
    EXECUTE format('CREATE POLICY system ON %I TO app_system USING (true) WITH CHECK (true)', t);
    EXECUTE format('CREATE POLICY own ON %I TO app_rls USING (practice_id = app.practice()) WITH CHECK (practice_id = app.practice())', t);
    EXECUTE format('CREATE TRIGGER stays BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION app.stays()', t);
  END LOOP;
END $$;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO app_rls, app_system;

ALTER TABLE fee_entry ADD CONSTRAINT fee_entry_amount CHECK (amount_minor >= 0);
ALTER TABLE centre_bill_line ADD CONSTRAINT centre_bill_line_amount CHECK (amount_minor >= 0);

-- What a practice has sent, and what has been read of it, is looked through for every bill.
CREATE INDEX fact_sent ON fact (practice, order_id) WHERE type = 'packageSent';
CREATE INDEX fact_read ON fact (order_id) WHERE type = 'resultArrived';
