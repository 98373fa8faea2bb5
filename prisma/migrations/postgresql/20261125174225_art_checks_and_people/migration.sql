-- AlterTable
ALTER TABLE "Person" ADD COLUMN     "confirmedAt" TIMESTAMP(3),
ADD COLUMN     "confirmedBy" TEXT,
ADD COLUMN     "meantJson" TEXT NOT NULL,
ADD COLUMN     "version" INTEGER NOT NULL;

-- CreateTable
CREATE TABLE "Roster" (
    "jobId" TEXT NOT NULL,
    "columnsJson" TEXT NOT NULL,
    "settingsJson" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Roster_pkey" PRIMARY KEY ("jobId")
);

-- CreateTable
CREATE TABLE "PersonChange" (
    "id" TEXT NOT NULL,
    "jobId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "userId" TEXT,
    "contactId" TEXT,
    "beforeJson" TEXT,
    "afterJson" TEXT,
    "at" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "PersonChange_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ArtCheck" (
    "pictureSha256" TEXT NOT NULL,
    "format" INTEGER NOT NULL,
    "json" TEXT NOT NULL,
    "madeAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "ArtCheck_pkey" PRIMARY KEY ("pictureSha256")
);

-- CreateTable
CREATE TABLE "ShopFont" (
    "sha256" TEXT NOT NULL,
    "fileName" TEXT NOT NULL,
    "embedding" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "ShopFont_pkey" PRIMARY KEY ("sha256")
);

-- CreateIndex
CREATE INDEX "PersonChange_jobId_at_idx" ON "PersonChange"("jobId", "at");

-- AddForeignKey
ALTER TABLE "Roster" ADD CONSTRAINT "Roster_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PersonChange" ADD CONSTRAINT "PersonChange_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ShopFont" ADD CONSTRAINT "ShopFont_sha256_fkey" FOREIGN KEY ("sha256") REFERENCES "Font"("sha256") ON DELETE RESTRICT ON UPDATE CASCADE;
