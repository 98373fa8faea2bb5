-- AlterTable
ALTER TABLE "BlankColour" ADD COLUMN "secondHex" TEXT;
ALTER TABLE "BlankColour" ADD COLUMN "secondName" TEXT;

-- CreateTable
CREATE TABLE "StockMove" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "sizeId" TEXT NOT NULL,
    "colourId" TEXT NOT NULL,
    "change" INTEGER NOT NULL,
    "reason" TEXT NOT NULL,
    "byUserId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "StockMove_sizeId_fkey" FOREIGN KEY ("sizeId") REFERENCES "BlankSize" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "StockMove_colourId_fkey" FOREIGN KEY ("colourId") REFERENCES "BlankColour" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "BlankPhotograph" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "blankId" TEXT NOT NULL,
    "sizeId" TEXT NOT NULL,
    "colourId" TEXT NOT NULL,
    "side" TEXT NOT NULL,
    "pictureSha256" TEXT NOT NULL,
    "widthPx" INTEGER NOT NULL,
    "heightPx" INTEGER NOT NULL,
    "settingJson" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "BlankPhotograph_blankId_fkey" FOREIGN KEY ("blankId") REFERENCES "Blank" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "BlankPhotograph_sizeId_fkey" FOREIGN KEY ("sizeId") REFERENCES "BlankSize" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "BlankPhotograph_colourId_fkey" FOREIGN KEY ("colourId") REFERENCES "BlankColour" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "BlankPhotograph_pictureSha256_fkey" FOREIGN KEY ("pictureSha256") REFERENCES "File" ("sha256") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_Blank" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "ageBand" TEXT NOT NULL,
    "fabric" TEXT NOT NULL,
    "chartSource" TEXT NOT NULL,
    "supplierNote" TEXT NOT NULL,
    "toleranceAcrossUm" INTEGER NOT NULL,
    "toleranceAlongUm" INTEGER NOT NULL,
    "archivedAt" DATETIME,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);
INSERT INTO "new_Blank" ("archivedAt", "chartSource", "createdAt", "fabric", "id", "kind", "name", "toleranceAcrossUm", "toleranceAlongUm", "updatedAt") SELECT "archivedAt", "chartSource", "createdAt", "fabric", "id", "kind", "name", "toleranceAcrossUm", "toleranceAlongUm", "updatedAt" FROM "Blank";
DROP TABLE "Blank";
ALTER TABLE "new_Blank" RENAME TO "Blank";
CREATE INDEX "Blank_archivedAt_name_idx" ON "Blank"("archivedAt", "name");
CREATE TABLE "new_BlankSize" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "blankId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "label" TEXT NOT NULL,
    "measuresJson" TEXT NOT NULL,
    "costMinor" INTEGER,
    CONSTRAINT "BlankSize_blankId_fkey" FOREIGN KEY ("blankId") REFERENCES "Blank" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);
INSERT INTO "new_BlankSize" ("blankId", "id", "label", "measuresJson", "position") SELECT "blankId", "id", "label", "measuresJson", "position" FROM "BlankSize";
DROP TABLE "BlankSize";
ALTER TABLE "new_BlankSize" RENAME TO "BlankSize";
CREATE UNIQUE INDEX "BlankSize_blankId_label_key" ON "BlankSize"("blankId", "label");
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;

-- CreateIndex
CREATE INDEX "StockMove_sizeId_colourId_idx" ON "StockMove"("sizeId", "colourId");

-- CreateIndex
CREATE INDEX "BlankPhotograph_blankId_idx" ON "BlankPhotograph"("blankId");

-- CreateIndex
CREATE UNIQUE INDEX "BlankPhotograph_sizeId_colourId_side_key" ON "BlankPhotograph"("sizeId", "colourId", "side");
