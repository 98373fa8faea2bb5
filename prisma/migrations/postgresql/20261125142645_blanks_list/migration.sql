-- AlterTable
ALTER TABLE "Blank" ADD COLUMN     "ageBand" TEXT NOT NULL,
ADD COLUMN     "supplierNote" TEXT NOT NULL;

-- AlterTable
ALTER TABLE "BlankSize" DROP COLUMN "band",
ADD COLUMN     "costMinor" INTEGER;

-- AlterTable
ALTER TABLE "BlankColour" ADD COLUMN     "secondHex" TEXT,
ADD COLUMN     "secondName" TEXT;

-- CreateTable
CREATE TABLE "StockMove" (
    "id" TEXT NOT NULL,
    "sizeId" TEXT NOT NULL,
    "colourId" TEXT NOT NULL,
    "change" INTEGER NOT NULL,
    "reason" TEXT NOT NULL,
    "byUserId" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "StockMove_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "BlankPhotograph" (
    "id" TEXT NOT NULL,
    "blankId" TEXT NOT NULL,
    "sizeId" TEXT NOT NULL,
    "colourId" TEXT NOT NULL,
    "side" TEXT NOT NULL,
    "pictureSha256" TEXT NOT NULL,
    "widthPx" INTEGER NOT NULL,
    "heightPx" INTEGER NOT NULL,
    "settingJson" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "BlankPhotograph_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "StockMove_sizeId_colourId_idx" ON "StockMove"("sizeId", "colourId");

-- CreateIndex
CREATE INDEX "BlankPhotograph_blankId_idx" ON "BlankPhotograph"("blankId");

-- CreateIndex
CREATE UNIQUE INDEX "BlankPhotograph_sizeId_colourId_side_key" ON "BlankPhotograph"("sizeId", "colourId", "side");

-- CreateIndex
CREATE INDEX "Blank_archivedAt_name_idx" ON "Blank"("archivedAt", "name");

-- AddForeignKey
ALTER TABLE "StockMove" ADD CONSTRAINT "StockMove_sizeId_fkey" FOREIGN KEY ("sizeId") REFERENCES "BlankSize"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "StockMove" ADD CONSTRAINT "StockMove_colourId_fkey" FOREIGN KEY ("colourId") REFERENCES "BlankColour"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BlankPhotograph" ADD CONSTRAINT "BlankPhotograph_blankId_fkey" FOREIGN KEY ("blankId") REFERENCES "Blank"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BlankPhotograph" ADD CONSTRAINT "BlankPhotograph_sizeId_fkey" FOREIGN KEY ("sizeId") REFERENCES "BlankSize"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BlankPhotograph" ADD CONSTRAINT "BlankPhotograph_colourId_fkey" FOREIGN KEY ("colourId") REFERENCES "BlankColour"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BlankPhotograph" ADD CONSTRAINT "BlankPhotograph_pictureSha256_fkey" FOREIGN KEY ("pictureSha256") REFERENCES "File"("sha256") ON DELETE RESTRICT ON UPDATE CASCADE;
