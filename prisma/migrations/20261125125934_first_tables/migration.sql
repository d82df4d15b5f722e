-- Search by similar names, and exclusion of overlapping bookings.
CREATE EXTENSION IF NOT EXISTS pg_trgm;
CREATE EXTENSION IF NOT EXISTS btree_gist;

-- CreateTable
CREATE TABLE "orders" (
    "id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "accession" TEXT NOT NULL,
    "dog_id" UUID NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 0,
    "step" TEXT NOT NULL DEFAULT 'none',
    "first_hold" TEXT,
    "evaluation" JSONB NOT NULL DEFAULT '{}',
    "wake_at" TIMESTAMPTZ(3),
    "closed" BOOLEAN NOT NULL DEFAULT false,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "orders_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "order_access" (
    "order_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "why" TEXT NOT NULL,

    CONSTRAINT "order_access_pkey" PRIMARY KEY ("order_id","practice_id")
);

-- CreateTable
CREATE TABLE "fact" (
    "order_id" UUID NOT NULL,
    "id" TEXT NOT NULL,
    "seq" BIGSERIAL NOT NULL,
    "type" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "rec" TIMESTAMPTZ(3) NOT NULL,
    "by" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "practice" TEXT NOT NULL,
    "body" JSONB NOT NULL,

    CONSTRAINT "fact_pkey" PRIMARY KEY ("order_id","id")
);

-- CreateTable
CREATE TABLE "visit" (
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "day" DATE,
    "start" TEXT,
    "step" TEXT NOT NULL,
    "first_hold" TEXT,
    "open" BOOLEAN NOT NULL,

    CONSTRAINT "visit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "study" (
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "protocol" TEXT NOT NULL,
    "version" TEXT NOT NULL,
    "centre_id" UUID NOT NULL,
    "step" TEXT NOT NULL,
    "since" TIMESTAMPTZ(3),
    "first_hold" TEXT,
    "clock" TEXT,
    "due_day" DATE,
    "next_day" DATE,
    "act" TEXT,
    "cause" TEXT,
    "imaged_not_sent" BOOLEAN NOT NULL DEFAULT false,
    "open" BOOLEAN NOT NULL,

    CONSTRAINT "study_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "slot" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "resource_id" UUID NOT NULL,
    "period" tstzrange NOT NULL,

    CONSTRAINT "slot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "image" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "order_id" UUID NOT NULL,
    "sha256" TEXT NOT NULL,
    "preview_sha" TEXT,
    "kind" TEXT NOT NULL,
    "size" INTEGER NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "image_day" DATE,
    "patient_id" TEXT,
    "by" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "image_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "package" (
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "practice_id" UUID NOT NULL,
    "study_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "manifest" TEXT NOT NULL,
    "summary" JSONB NOT NULL,
    "zip_sha" TEXT,
    "sealed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "package_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "package_access" (
    "package_id" UUID NOT NULL,
    "centre_id" UUID NOT NULL,
    "send_id" UUID NOT NULL,
    "sent_at" TIMESTAMPTZ(3) NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'new',
    "due_day" DATE,
    "reading" JSONB,

    CONSTRAINT "package_access_pkey" PRIMARY KEY ("package_id","centre_id")
);

-- CreateTable
CREATE TABLE "document" (
    "id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "template" TEXT NOT NULL,
    "snapshot" JSONB NOT NULL,
    "snapshot_hash" TEXT NOT NULL,
    "pdf_sha" TEXT,
    "serial" TEXT,
    "state" TEXT NOT NULL DEFAULT 'valid',
    "replaced_by" UUID,
    "for_owner" BOOLEAN NOT NULL DEFAULT true,
    "subject" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "document_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "message" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "order_id" UUID,
    "practice_id" UUID,
    "once_key" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "person_id" UUID,
    "to_name" TEXT NOT NULL,
    "to_email" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "body" JSONB NOT NULL,
    "documents" UUID[],
    "subject_id" TEXT,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "detail" TEXT,
    "not_before" TIMESTAMPTZ(3),
    "claimed_at" TIMESTAMPTZ(3),
    "done_at" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "message_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "outbox" (
    "id" BIGSERIAL NOT NULL,
    "job" TEXT NOT NULL,
    "payload" JSONB NOT NULL,
    "dedupe" TEXT,
    "not_before" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "relayed_at" TIMESTAMPTZ(3),

    CONSTRAINT "outbox_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "problem" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "order_id" UUID NOT NULL,
    "job" TEXT NOT NULL,
    "payload" JSONB NOT NULL,
    "words" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "resolved_at" TIMESTAMPTZ(3),
    "resolved_by" TEXT,

    CONSTRAINT "problem_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "audit" (
    "id" BIGSERIAL NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "practice_id" UUID,
    "order_id" UUID,
    "by" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "subject" TEXT,
    "detail" JSONB NOT NULL DEFAULT '{}',

    CONSTRAINT "audit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "captured_mail" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "message_id" TEXT NOT NULL,
    "practice_id" UUID,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "html" TEXT,
    "files" JSONB NOT NULL DEFAULT '[]',
    "raw" BYTEA NOT NULL,

    CONSTRAINT "captured_mail_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rate_limits" (
    "key" VARCHAR(255) NOT NULL,
    "points" INTEGER NOT NULL DEFAULT 0,
    "expire" BIGINT,

    CONSTRAINT "rate_limits_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "person" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "latin_name" TEXT,
    "email" TEXT,
    "phone" TEXT,
    "address" TEXT,
    "channel" TEXT NOT NULL DEFAULT 'mail',
    "language" TEXT NOT NULL DEFAULT 'en',
    "erased_at" TIMESTAMPTZ(3),

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dog" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "animal_id" TEXT NOT NULL,
    "call_name" TEXT NOT NULL,
    "breed" TEXT NOT NULL,
    "sex" TEXT NOT NULL,
    "neutered" BOOLEAN NOT NULL,
    "born_earliest" DATE NOT NULL,
    "born_latest" DATE NOT NULL,
    "born_precision" TEXT NOT NULL,
    "sire_name" TEXT,
    "dam_name" TEXT,
    "sire_id" UUID,
    "dam_id" UUID,
    "died" DATE,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "dog_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dog_name" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "latin_name" TEXT,
    "valid_from" DATE NOT NULL,

    CONSTRAINT "dog_name_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dog_identifier" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "how" TEXT NOT NULL,
    "valid_from" DATE NOT NULL,
    "valid_until" DATE,

    CONSTRAINT "dog_identifier_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "stud_book_number" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "book" TEXT NOT NULL,
    "number" TEXT NOT NULL,

    CONSTRAINT "stud_book_number_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dog_role" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "dog_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "valid_from" DATE NOT NULL,
    "valid_until" DATE,

    CONSTRAINT "dog_role_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "scheme" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT NOT NULL,
    "country" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "demo" BOOLEAN NOT NULL DEFAULT false,
    "breeds" JSONB NOT NULL DEFAULT '{}',
    "signing_key" TEXT NOT NULL,
    "public_key" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "scheme_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "practice" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "scheme_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "place" TEXT NOT NULL DEFAULT '',
    "address" TEXT NOT NULL,
    "phone" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "letters" TEXT NOT NULL,
    "may_certify" BOOLEAN NOT NULL DEFAULT false,
    "policy" JSONB NOT NULL DEFAULT '{}',
    "prices" JSONB NOT NULL,
    "next_number" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "practice_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "centre" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "scheme_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "place" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "region" TEXT,
    "holidays" TEXT[],
    "ack_days" INTEGER NOT NULL,
    "result_days" INTEGER NOT NULL,
    "remind_every" INTEGER NOT NULL,
    "reminders" INTEGER NOT NULL,
    "appeal_days" INTEGER NOT NULL,
    "fee_minor" INTEGER NOT NULL,
    "protocols" TEXT[],

    CONSTRAINT "centre_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "staff" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "scheme_id" UUID NOT NULL,
    "practice_id" UUID,
    "centre_id" UUID,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "roles" TEXT[],
    "active" BOOLEAN NOT NULL DEFAULT true,

    CONSTRAINT "staff_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "session" (
    "token_hash" TEXT NOT NULL,
    "csrf" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "staff_id" UUID,
    "link_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "session_pkey" PRIMARY KEY ("token_hash")
);

-- CreateTable
CREATE TABLE "link" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "token_hash" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "practice_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "package_id" UUID,
    "centre_id" UUID,
    "person_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "link_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "room" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,

    CONSTRAINT "room_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "equipment" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "checked_until" DATE NOT NULL,

    CONSTRAINT "equipment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "accreditation" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "staff_id" UUID NOT NULL,
    "protocol" TEXT NOT NULL,
    "valid_from" DATE NOT NULL,
    "valid_until" DATE NOT NULL,
    "evidence" TEXT NOT NULL,

    CONSTRAINT "accreditation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "approved_text" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "practice_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "version" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "for_dogs" TEXT NOT NULL,
    "language" TEXT NOT NULL DEFAULT 'en',
    "body" TEXT NOT NULL,
    "approved_by" UUID NOT NULL,
    "approved_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "approved_text_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "orders_accession_key" ON "orders"("accession");

-- CreateIndex
CREATE INDEX "orders_practice_id_closed_idx" ON "orders"("practice_id", "closed");

-- CreateIndex
CREATE INDEX "orders_dog_id_idx" ON "orders"("dog_id");

-- CreateIndex
CREATE INDEX "orders_wake_at_idx" ON "orders"("wake_at");

-- CreateIndex
CREATE INDEX "order_access_practice_id_idx" ON "order_access"("practice_id");

-- CreateIndex
CREATE INDEX "fact_order_id_seq_idx" ON "fact"("order_id", "seq");

-- CreateIndex
CREATE INDEX "visit_practice_id_day_idx" ON "visit"("practice_id", "day");

-- CreateIndex
CREATE INDEX "visit_order_id_idx" ON "visit"("order_id");

-- CreateIndex
CREATE INDEX "study_next_day_centre_id_idx" ON "study"("next_day", "centre_id");

-- CreateIndex
CREATE INDEX "study_practice_id_step_idx" ON "study"("practice_id", "step");

-- CreateIndex
CREATE INDEX "study_order_id_idx" ON "study"("order_id");

-- CreateIndex
CREATE INDEX "slot_visit_id_idx" ON "slot"("visit_id");

-- CreateIndex
CREATE UNIQUE INDEX "image_order_id_sha256_key" ON "image"("order_id", "sha256");

-- CreateIndex
CREATE UNIQUE INDEX "package_number_key" ON "package"("number");

-- CreateIndex
CREATE INDEX "package_order_id_idx" ON "package"("order_id");

-- CreateIndex
CREATE INDEX "package_access_centre_id_idx" ON "package_access"("centre_id");

-- CreateIndex
CREATE UNIQUE INDEX "document_serial_key" ON "document"("serial");

-- CreateIndex
CREATE INDEX "document_order_id_idx" ON "document"("order_id");

-- CreateIndex
CREATE UNIQUE INDEX "message_once_key_key" ON "message"("once_key");

-- CreateIndex
CREATE INDEX "message_order_id_idx" ON "message"("order_id");

-- CreateIndex
CREATE INDEX "message_state_not_before_idx" ON "message"("state", "not_before");

-- CreateIndex
CREATE INDEX "problem_order_id_idx" ON "problem"("order_id");

-- CreateIndex
CREATE INDEX "audit_order_id_id_idx" ON "audit"("order_id", "id");

-- CreateIndex
CREATE INDEX "audit_practice_id_id_idx" ON "audit"("practice_id", "id");

-- CreateIndex
CREATE INDEX "captured_mail_at_idx" ON "captured_mail"("at");

-- CreateIndex
CREATE INDEX "person_practice_id_idx" ON "person"("practice_id");

-- CreateIndex
CREATE INDEX "person_name_trgm" ON "person" USING GIN ("name" gin_trgm_ops);

-- CreateIndex
CREATE UNIQUE INDEX "dog_animal_id_key" ON "dog"("animal_id");

-- CreateIndex
CREATE INDEX "dog_practice_id_idx" ON "dog"("practice_id");

-- CreateIndex
CREATE INDEX "dog_name_dog_id_idx" ON "dog_name"("dog_id");

-- CreateIndex
CREATE INDEX "dog_name_trgm" ON "dog_name" USING GIN ("name" gin_trgm_ops);

-- CreateIndex
CREATE INDEX "dog_identifier_dog_id_idx" ON "dog_identifier"("dog_id");

-- CreateIndex
CREATE INDEX "dog_identifier_practice_id_value_idx" ON "dog_identifier"("practice_id", "value");

-- CreateIndex
CREATE INDEX "stud_book_number_dog_id_idx" ON "stud_book_number"("dog_id");

-- CreateIndex
CREATE INDEX "dog_role_dog_id_idx" ON "dog_role"("dog_id");

-- CreateIndex
CREATE INDEX "dog_role_person_id_idx" ON "dog_role"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "practice_letters_key" ON "practice"("letters");

-- CreateIndex
CREATE UNIQUE INDEX "staff_email_key" ON "staff"("email");

-- CreateIndex
CREATE INDEX "staff_practice_id_idx" ON "staff"("practice_id");

-- CreateIndex
CREATE UNIQUE INDEX "link_token_hash_key" ON "link"("token_hash");

-- CreateIndex
CREATE INDEX "link_order_id_idx" ON "link"("order_id");

-- CreateIndex
CREATE UNIQUE INDEX "room_practice_id_name_key" ON "room"("practice_id", "name");

-- CreateIndex
CREATE INDEX "equipment_practice_id_idx" ON "equipment"("practice_id");

-- CreateIndex
CREATE INDEX "accreditation_practice_id_protocol_idx" ON "accreditation"("practice_id", "protocol");

-- CreateIndex
CREATE UNIQUE INDEX "approved_text_practice_id_kind_title_language_version_key" ON "approved_text"("practice_id", "kind", "title", "language", "version");
