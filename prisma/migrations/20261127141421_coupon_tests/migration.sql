-- CreateTable
CREATE TABLE "coupon_test" (
    "id" UUID NOT NULL,
    "club_id" UUID NOT NULL,
    "material" TEXT NOT NULL,
    "property" TEXT NOT NULL,
    "mean" DOUBLE PRECISION NOT NULL,
    "deviation" DOUBLE PRECISION NOT NULL,
    "count" INTEGER NOT NULL,
    "process" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "coupon_test_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "coupon_test_void" (
    "coupon_test_id" UUID NOT NULL,
    "by_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "coupon_test_void_pkey" PRIMARY KEY ("coupon_test_id")
);

-- CreateIndex
CREATE INDEX "coupon_test_club_id_at_idx" ON "coupon_test"("club_id", "at");

-- AddForeignKey
ALTER TABLE "coupon_test" ADD CONSTRAINT "coupon_test_club_id_fkey" FOREIGN KEY ("club_id") REFERENCES "club"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "coupon_test" ADD CONSTRAINT "coupon_test_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "coupon_test_void" ADD CONSTRAINT "coupon_test_void_coupon_test_id_fkey" FOREIGN KEY ("coupon_test_id") REFERENCES "coupon_test"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "coupon_test_void" ADD CONSTRAINT "coupon_test_void_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What was tested stays as it was entered; a test is withdrawn with a reason, never changed.
DO $$
DECLARE
  facts text;
BEGIN
  FOREACH facts IN ARRAY ARRAY['coupon_test', 'coupon_test_void'] LOOP
    EXECUTE format(
      'CREATE TRIGGER %I BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_change()',
      facts || '_stays', facts);
    EXECUTE format(
      'CREATE TRIGGER %I BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()',
      facts || '_is_kept', facts);
  END LOOP;
END
$$;

ALTER TABLE coupon_test ADD CONSTRAINT coupon_test_numbers CHECK (mean > 0 AND deviation >= 0 AND count >= 3);
ALTER TABLE coupon_test_void ADD CONSTRAINT coupon_test_void_reason_said CHECK (length(btrim(reason)) >= 10);
