-- CreateTable
CREATE TABLE "gain_map" (
    "document_hash" TEXT NOT NULL,
    "method" TEXT NOT NULL,
    "request" TEXT NOT NULL,
    "result" JSONB NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "gain_map_pkey" PRIMARY KEY ("document_hash","method","request")
);
