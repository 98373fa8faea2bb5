-- CreateTable
CREATE TABLE "Roster" (
    "jobId" TEXT NOT NULL PRIMARY KEY,
    "columnsJson" TEXT NOT NULL,
    "settingsJson" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Roster_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "PersonChange" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "userId" TEXT,
    "contactId" TEXT,
    "beforeJson" TEXT,
    "afterJson" TEXT,
    "at" DATETIME NOT NULL,
    CONSTRAINT "PersonChange_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ArtCheck" (
    "pictureSha256" TEXT NOT NULL PRIMARY KEY,
    "format" INTEGER NOT NULL,
    "json" TEXT NOT NULL,
    "madeAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "ShopFont" (
    "sha256" TEXT NOT NULL PRIMARY KEY,
    "fileName" TEXT NOT NULL,
    "embedding" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "ShopFont_sha256_fkey" FOREIGN KEY ("sha256") REFERENCES "Font" ("sha256") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- RedefineTables
PRAGMA defer_foreign_keys=ON;
PRAGMA foreign_keys=OFF;
CREATE TABLE "new_Person" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "fieldsJson" TEXT NOT NULL,
    "meantJson" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "confirmedAt" DATETIME,
    "confirmedBy" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Person_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);
INSERT INTO "new_Person" ("createdAt", "fieldsJson", "id", "jobId", "position", "updatedAt") SELECT "createdAt", "fieldsJson", "id", "jobId", "position", "updatedAt" FROM "Person";
DROP TABLE "Person";
ALTER TABLE "new_Person" RENAME TO "Person";
CREATE INDEX "Person_jobId_position_idx" ON "Person"("jobId", "position");
PRAGMA foreign_keys=ON;
PRAGMA defer_foreign_keys=OFF;

-- CreateIndex
CREATE INDEX "PersonChange_jobId_at_idx" ON "PersonChange"("jobId", "at");
