-- CreateEnum
CREATE TYPE "role" AS ENUM ('steward', 'safetyOfficer', 'member', 'guest');

-- CreateEnum
CREATE TYPE "hold_point" AS ENUM ('benchSpin', 'proofLoad', 'fullPower');

-- CreateEnum
CREATE TYPE "disposition_kind" AS ENUM ('accepted', 'notApplicable', 'reworked');

-- CreateEnum
CREATE TYPE "anchor_kind" AS ENUM ('field', 'figure', 'check', 'finding', 'revision');

-- CreateEnum
CREATE TYPE "thread_state" AS ENUM ('open', 'resolved');

-- CreateEnum
CREATE TYPE "remark_act" AS ENUM ('opened', 'replied', 'resolved', 'reopened');

-- CreateTable
CREATE TABLE "user" (
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "session_version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "user_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "club" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "design_count" INTEGER NOT NULL DEFAULT 0,
    "ledger_seq" INTEGER NOT NULL DEFAULT 0,
    "ledger_hash" TEXT NOT NULL,

    CONSTRAINT "club_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "membership" (
    "id" UUID NOT NULL,
    "user_id" UUID NOT NULL,
    "club_id" UUID NOT NULL,
    "role" "role" NOT NULL,
    "started_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "membership_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "invitation" (
    "id" UUID NOT NULL,
    "club_id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "role" "role" NOT NULL,
    "token_hash" TEXT NOT NULL,
    "invited_by_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),
    "withdrawn_at" TIMESTAMPTZ(3),

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "design" (
    "id" UUID NOT NULL,
    "club_id" UUID NOT NULL,
    "sequence" INTEGER NOT NULL,
    "number" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "author_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "revision_count" INTEGER NOT NULL DEFAULT 0,
    "thread_count" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "design_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "draft" (
    "design_id" UUID NOT NULL,
    "content" JSONB NOT NULL,
    "document_hash" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "hands" UUID[],
    "updated_by_id" UUID NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "draft_pkey" PRIMARY KEY ("design_id")
);

-- CreateTable
CREATE TABLE "revision" (
    "id" UUID NOT NULL,
    "design_id" UUID NOT NULL,
    "ordinal" INTEGER NOT NULL,
    "letter" TEXT NOT NULL,
    "document" JSONB NOT NULL,
    "document_hash" TEXT NOT NULL,
    "change_note" TEXT NOT NULL,
    "author_id" UUID NOT NULL,
    "hands" UUID[],
    "published_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "revision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "assessment" (
    "id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "method" TEXT NOT NULL,
    "result" JSONB NOT NULL,
    "hash" TEXT NOT NULL,
    "headline" JSONB NOT NULL,
    "facts" JSONB NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "assessment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "thread" (
    "id" UUID NOT NULL,
    "design_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "revision_id" UUID NOT NULL,
    "anchor_kind" "anchor_kind" NOT NULL,
    "anchor_path" TEXT NOT NULL,
    "anchor_label" TEXT NOT NULL,
    "state" "thread_state" NOT NULL DEFAULT 'open',
    "opened_by_id" UUID NOT NULL,
    "opened_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "thread_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "remark" (
    "id" UUID NOT NULL,
    "thread_id" UUID NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "text" TEXT NOT NULL,
    "act" "remark_act" NOT NULL,

    CONSTRAINT "remark_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "disposition" (
    "id" UUID NOT NULL,
    "design_id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "finding_key" TEXT NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "kind" "disposition_kind" NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "role_then" "role" NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "disposition_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_off" (
    "id" UUID NOT NULL,
    "revision_id" UUID NOT NULL,
    "assessment_id" UUID NOT NULL,
    "hold_point" "hold_point" NOT NULL,
    "signer_id" UUID NOT NULL,
    "round" INTEGER NOT NULL,
    "role_then" "role" NOT NULL,
    "meaning" TEXT NOT NULL,
    "meaning_version" INTEGER NOT NULL,
    "requirements_version" INTEGER NOT NULL,
    "document_hash" TEXT NOT NULL,
    "assessment_hash" TEXT NOT NULL,
    "method" TEXT NOT NULL,
    "statement_hash" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_off_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_off_void" (
    "sign_off_id" UUID NOT NULL,
    "by_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_off_void_pkey" PRIMARY KEY ("sign_off_id")
);

-- CreateTable
CREATE TABLE "ledger_event" (
    "club_id" UUID NOT NULL,
    "seq" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "actor_id" UUID,
    "kind" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "data" JSONB NOT NULL,
    "previous_hash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,

    CONSTRAINT "ledger_event_pkey" PRIMARY KEY ("club_id","seq")
);

-- CreateTable
CREATE TABLE "attempt" (
    "key" TEXT NOT NULL,
    "failures" INTEGER NOT NULL,
    "until" TIMESTAMPTZ(3) NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "attempt_pkey" PRIMARY KEY ("key")
);

-- CreateIndex
CREATE UNIQUE INDEX "user_email_key" ON "user"("email");

-- CreateIndex
CREATE UNIQUE INDEX "club_code_key" ON "club"("code");

-- CreateIndex
CREATE INDEX "membership_club_id_idx" ON "membership"("club_id");

-- CreateIndex
CREATE UNIQUE INDEX "membership_user_id_club_id_key" ON "membership"("user_id", "club_id");

-- CreateIndex
CREATE UNIQUE INDEX "invitation_token_hash_key" ON "invitation"("token_hash");

-- CreateIndex
CREATE INDEX "invitation_club_id_created_at_idx" ON "invitation"("club_id", "created_at");

-- CreateIndex
CREATE UNIQUE INDEX "design_number_key" ON "design"("number");

-- CreateIndex
CREATE INDEX "design_author_id_idx" ON "design"("author_id");

-- CreateIndex
CREATE UNIQUE INDEX "design_club_id_sequence_key" ON "design"("club_id", "sequence");

-- CreateIndex
CREATE UNIQUE INDEX "revision_design_id_ordinal_key" ON "revision"("design_id", "ordinal");

-- CreateIndex
CREATE UNIQUE INDEX "revision_design_id_letter_key" ON "revision"("design_id", "letter");

-- CreateIndex
CREATE INDEX "assessment_revision_id_made_at_idx" ON "assessment"("revision_id", "made_at");

-- CreateIndex
CREATE UNIQUE INDEX "assessment_revision_id_method_key" ON "assessment"("revision_id", "method");

-- CreateIndex
CREATE INDEX "thread_design_id_state_idx" ON "thread"("design_id", "state");

-- CreateIndex
CREATE UNIQUE INDEX "thread_design_id_number_key" ON "thread"("design_id", "number");

-- CreateIndex
CREATE INDEX "remark_thread_id_at_idx" ON "remark"("thread_id", "at");

-- CreateIndex
CREATE INDEX "disposition_design_id_finding_key_at_idx" ON "disposition"("design_id", "finding_key", "at");

-- CreateIndex
CREATE UNIQUE INDEX "sign_off_revision_id_hold_point_signer_id_round_key" ON "sign_off"("revision_id", "hold_point", "signer_id", "round");

-- CreateIndex
CREATE INDEX "attempt_updated_at_idx" ON "attempt"("updated_at");

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_club_id_fkey" FOREIGN KEY ("club_id") REFERENCES "club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_club_id_fkey" FOREIGN KEY ("club_id") REFERENCES "club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_invited_by_id_fkey" FOREIGN KEY ("invited_by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "design" ADD CONSTRAINT "design_club_id_fkey" FOREIGN KEY ("club_id") REFERENCES "club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "design" ADD CONSTRAINT "design_author_id_fkey" FOREIGN KEY ("author_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft" ADD CONSTRAINT "draft_design_id_fkey" FOREIGN KEY ("design_id") REFERENCES "design"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "draft" ADD CONSTRAINT "draft_updated_by_id_fkey" FOREIGN KEY ("updated_by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision" ADD CONSTRAINT "revision_design_id_fkey" FOREIGN KEY ("design_id") REFERENCES "design"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "revision" ADD CONSTRAINT "revision_author_id_fkey" FOREIGN KEY ("author_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "assessment" ADD CONSTRAINT "assessment_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "thread" ADD CONSTRAINT "thread_design_id_fkey" FOREIGN KEY ("design_id") REFERENCES "design"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "thread" ADD CONSTRAINT "thread_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "thread" ADD CONSTRAINT "thread_opened_by_id_fkey" FOREIGN KEY ("opened_by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "remark" ADD CONSTRAINT "remark_thread_id_fkey" FOREIGN KEY ("thread_id") REFERENCES "thread"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "remark" ADD CONSTRAINT "remark_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "disposition" ADD CONSTRAINT "disposition_design_id_fkey" FOREIGN KEY ("design_id") REFERENCES "design"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "disposition" ADD CONSTRAINT "disposition_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "disposition" ADD CONSTRAINT "disposition_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_off" ADD CONSTRAINT "sign_off_revision_id_fkey" FOREIGN KEY ("revision_id") REFERENCES "revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_off" ADD CONSTRAINT "sign_off_assessment_id_fkey" FOREIGN KEY ("assessment_id") REFERENCES "assessment"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_off" ADD CONSTRAINT "sign_off_signer_id_fkey" FOREIGN KEY ("signer_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_off_void" ADD CONSTRAINT "sign_off_void_sign_off_id_fkey" FOREIGN KEY ("sign_off_id") REFERENCES "sign_off"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_off_void" ADD CONSTRAINT "sign_off_void_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ledger_event" ADD CONSTRAINT "ledger_event_club_id_fkey" FOREIGN KEY ("club_id") REFERENCES "club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ledger_event" ADD CONSTRAINT "ledger_event_actor_id_fkey" FOREIGN KEY ("actor_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
