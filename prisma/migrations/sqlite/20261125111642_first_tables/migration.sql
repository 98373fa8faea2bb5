-- CreateTable
CREATE TABLE "Shop" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "slot" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "locale" TEXT NOT NULL,
    "statement" TEXT NOT NULL,
    "replyEmail" TEXT,
    "replyPhone" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL,
    "image" TEXT,
    "role" TEXT NOT NULL,
    "ownerOf" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "User_ownerOf_fkey" FOREIGN KEY ("ownerOf") REFERENCES "Shop" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "token" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Account" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" DATETIME,
    "refreshTokenExpiresAt" DATETIME,
    "scope" TEXT,
    "password" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Account_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Verification" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "RateLimit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL
);

-- CreateTable
CREATE TABLE "Customer" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT,
    "phone" TEXT,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Job" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "customerId" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "occasion" TEXT NOT NULL,
    "notes" TEXT NOT NULL,
    "neededByLocal" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "neededAt" DATETIME NOT NULL,
    "recordSeq" INTEGER NOT NULL,
    "recordHead" TEXT NOT NULL,
    "searchText" TEXT NOT NULL,
    "archivedAt" DATETIME,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Job_customerId_fkey" FOREIGN KEY ("customerId") REFERENCES "Customer" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Contact" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "name" TEXT,
    "email" TEXT,
    "phone" TEXT,
    "maySign" BOOLEAN NOT NULL,
    "mayRemark" BOOLEAN NOT NULL,
    "mayCorrect" BOOLEAN NOT NULL,
    "mayCollect" BOOLEAN NOT NULL,
    "mustSign" BOOLEAN NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Contact_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Draft" (
    "jobId" TEXT NOT NULL PRIMARY KEY,
    "format" INTEGER NOT NULL,
    "json" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Draft_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Person" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "fieldsJson" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "Person_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Item" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "personId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "garmentKey" TEXT NOT NULL,
    "blankKey" TEXT NOT NULL,
    "sizeKey" TEXT NOT NULL,
    "quantity" INTEGER NOT NULL,
    CONSTRAINT "Item_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "File" (
    "sha256" TEXT NOT NULL PRIMARY KEY,
    "byteLength" INTEGER NOT NULL,
    "mediaType" TEXT NOT NULL,
    "widthPx" INTEGER,
    "heightPx" INTEGER,
    "createdAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Art" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "fileSha256" TEXT NOT NULL,
    "pictureSha256" TEXT NOT NULL,
    "parentId" TEXT,
    "recipeJson" TEXT,
    "inkXPx" INTEGER NOT NULL,
    "inkYPx" INTEGER NOT NULL,
    "inkWidthPx" INTEGER NOT NULL,
    "inkHeightPx" INTEGER NOT NULL,
    "hullJson" TEXT NOT NULL,
    "notesJson" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Art_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Art_fileSha256_fkey" FOREIGN KEY ("fileSha256") REFERENCES "File" ("sha256") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Art_pictureSha256_fkey" FOREIGN KEY ("pictureSha256") REFERENCES "File" ("sha256") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Art_parentId_fkey" FOREIGN KEY ("parentId") REFERENCES "Art" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ArtLabel" (
    "artId" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    CONSTRAINT "ArtLabel_artId_fkey" FOREIGN KEY ("artId") REFERENCES "Art" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Font" (
    "sha256" TEXT NOT NULL PRIMARY KEY,
    "byteLength" INTEGER NOT NULL,
    "family" TEXT NOT NULL,
    "style" TEXT NOT NULL,
    "origin" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Blank" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "fabric" TEXT NOT NULL,
    "chartSource" TEXT NOT NULL,
    "toleranceAcrossUm" INTEGER NOT NULL,
    "toleranceAlongUm" INTEGER NOT NULL,
    "archivedAt" DATETIME,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "BlankSize" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "blankId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "label" TEXT NOT NULL,
    "band" TEXT NOT NULL,
    "measuresJson" TEXT NOT NULL,
    CONSTRAINT "BlankSize_blankId_fkey" FOREIGN KEY ("blankId") REFERENCES "Blank" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "BlankColour" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "blankId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "hex" TEXT NOT NULL,
    "heather" BOOLEAN NOT NULL,
    CONSTRAINT "BlankColour_blankId_fkey" FOREIGN KEY ("blankId") REFERENCES "Blank" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Revision" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "format" INTEGER NOT NULL,
    "seal" TEXT NOT NULL,
    "envelope" BLOB NOT NULL,
    "previousSeal" TEXT,
    "reason" TEXT NOT NULL,
    "draftVersion" INTEGER NOT NULL,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Revision_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RevisionLine" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "revisionId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "salt" BLOB NOT NULL,
    "bytes" BLOB NOT NULL,
    CONSTRAINT "RevisionLine_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RevisionScene" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "revisionId" TEXT NOT NULL,
    "garment" TEXT NOT NULL,
    "blank" TEXT NOT NULL,
    "size" TEXT NOT NULL,
    "side" TEXT NOT NULL,
    "line" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    CONSTRAINT "RevisionScene_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Drawing" (
    "sha256" TEXT NOT NULL PRIMARY KEY,
    "bytes" BLOB NOT NULL
);

-- CreateTable
CREATE TABLE "PersonalDrawing" (
    "sceneId" TEXT NOT NULL PRIMARY KEY,
    "salt" BLOB NOT NULL,
    "bytes" BLOB NOT NULL,
    CONSTRAINT "PersonalDrawing_sceneId_fkey" FOREIGN KEY ("sceneId") REFERENCES "RevisionScene" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RevisionView" (
    "revisionId" TEXT NOT NULL PRIMARY KEY,
    "json" TEXT NOT NULL,
    "madeAt" DATETIME NOT NULL,
    CONSTRAINT "RevisionView_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RevisionPicture" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "revisionId" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "mediaType" TEXT NOT NULL,
    "widthPx" INTEGER NOT NULL,
    "heightPx" INTEGER NOT NULL,
    "madeAt" DATETIME NOT NULL,
    CONSTRAINT "RevisionPicture_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RevisionEvent" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "revisionId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "occurrence" INTEGER NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "RevisionEvent_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Link" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "contactId" TEXT NOT NULL,
    "generation" INTEGER NOT NULL,
    "keyVersion" INTEGER NOT NULL,
    "mayJson" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "revokedAt" DATETIME,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Link_contactId_fkey" FOREIGN KEY ("contactId") REFERENCES "Contact" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Visit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "linkId" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "openedAt" DATETIME NOT NULL,
    CONSTRAINT "Visit_linkId_fkey" FOREIGN KEY ("linkId") REFERENCES "Link" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Visit_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Answer" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "revisionId" TEXT NOT NULL,
    "contactId" TEXT NOT NULL,
    "word" TEXT NOT NULL,
    "how" TEXT NOT NULL,
    "ticksJson" TEXT NOT NULL,
    "statementHash" TEXT NOT NULL,
    "identityHash" TEXT NOT NULL,
    "idempotencyKey" TEXT NOT NULL,
    "saidAt" DATETIME,
    "recordedById" TEXT,
    "evidenceSha256" TEXT,
    "at" DATETIME NOT NULL,
    CONSTRAINT "Answer_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Answer_contactId_fkey" FOREIGN KEY ("contactId") REFERENCES "Contact" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Answer_recordedById_fkey" FOREIGN KEY ("recordedById") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Answer_evidenceSha256_fkey" FOREIGN KEY ("evidenceSha256") REFERENCES "File" ("sha256") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AnswerIdentity" (
    "answerId" TEXT NOT NULL PRIMARY KEY,
    "salt" BLOB NOT NULL,
    "typedName" TEXT NOT NULL,
    "changeWords" TEXT NOT NULL,
    "clientAddress" TEXT NOT NULL,
    CONSTRAINT "AnswerIdentity_answerId_fkey" FOREIGN KEY ("answerId") REFERENCES "Answer" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Remark" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "revisionId" TEXT NOT NULL,
    "contactId" TEXT,
    "userId" TEXT,
    "parentId" TEXT,
    "garment" TEXT,
    "side" TEXT,
    "xUm" INTEGER,
    "yUm" INTEGER,
    "doneAt" DATETIME,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Remark_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Remark_contactId_fkey" FOREIGN KEY ("contactId") REFERENCES "Contact" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Remark_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Remark_parentId_fkey" FOREIGN KEY ("parentId") REFERENCES "Remark" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RemarkBody" (
    "remarkId" TEXT NOT NULL PRIMARY KEY,
    "text" TEXT NOT NULL,
    CONSTRAINT "RemarkBody_remarkId_fkey" FOREIGN KEY ("remarkId") REFERENCES "Remark" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RecordEntry" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "payloadHash" TEXT NOT NULL,
    "previousHash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "RecordEntry_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RecordPayload" (
    "entryId" TEXT NOT NULL PRIMARY KEY,
    "salt" BLOB NOT NULL,
    "bytes" BLOB NOT NULL,
    CONSTRAINT "RecordPayload_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "RecordEntry" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Erasure" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT NOT NULL,
    "erasedTable" TEXT NOT NULL,
    "erasedRowId" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "Erasure_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Outbox" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "jobId" TEXT,
    "channel" TEXT NOT NULL,
    "template" TEXT NOT NULL,
    "idsJson" TEXT NOT NULL,
    "messageId" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "attempts" INTEGER NOT NULL,
    "dueAt" DATETIME NOT NULL,
    "claimedUntil" DATETIME,
    "lastError" TEXT,
    "sentBy" TEXT,
    "sentAt" DATETIME,
    "createdAt" DATETIME NOT NULL,
    CONSTRAINT "Outbox_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE UNIQUE INDEX "Shop_slot_key" ON "Shop"("slot");

-- CreateIndex
CREATE UNIQUE INDEX "User_email_key" ON "User"("email");

-- CreateIndex
CREATE UNIQUE INDEX "User_ownerOf_key" ON "User"("ownerOf");

-- CreateIndex
CREATE UNIQUE INDEX "Session_token_key" ON "Session"("token");

-- CreateIndex
CREATE INDEX "Session_userId_idx" ON "Session"("userId");

-- CreateIndex
CREATE INDEX "Account_userId_idx" ON "Account"("userId");

-- CreateIndex
CREATE UNIQUE INDEX "Account_providerId_accountId_key" ON "Account"("providerId", "accountId");

-- CreateIndex
CREATE INDEX "Verification_identifier_idx" ON "Verification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "RateLimit_key_key" ON "RateLimit"("key");

-- CreateIndex
CREATE INDEX "Job_archivedAt_neededAt_idx" ON "Job"("archivedAt", "neededAt");

-- CreateIndex
CREATE INDEX "Job_customerId_idx" ON "Job"("customerId");

-- CreateIndex
CREATE INDEX "Contact_jobId_idx" ON "Contact"("jobId");

-- CreateIndex
CREATE INDEX "Person_jobId_position_idx" ON "Person"("jobId", "position");

-- CreateIndex
CREATE INDEX "Item_personId_idx" ON "Item"("personId");

-- CreateIndex
CREATE INDEX "Art_jobId_idx" ON "Art"("jobId");

-- CreateIndex
CREATE UNIQUE INDEX "BlankSize_blankId_label_key" ON "BlankSize"("blankId", "label");

-- CreateIndex
CREATE UNIQUE INDEX "BlankColour_blankId_name_key" ON "BlankColour"("blankId", "name");

-- CreateIndex
CREATE UNIQUE INDEX "Revision_seal_key" ON "Revision"("seal");

-- CreateIndex
CREATE UNIQUE INDEX "Revision_jobId_number_key" ON "Revision"("jobId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "RevisionLine_revisionId_position_key" ON "RevisionLine"("revisionId", "position");

-- CreateIndex
CREATE UNIQUE INDEX "RevisionScene_revisionId_garment_blank_size_side_line_key" ON "RevisionScene"("revisionId", "garment", "blank", "size", "side", "line");

-- CreateIndex
CREATE UNIQUE INDEX "RevisionPicture_revisionId_key_key" ON "RevisionPicture"("revisionId", "key");

-- CreateIndex
CREATE UNIQUE INDEX "RevisionEvent_revisionId_kind_occurrence_key" ON "RevisionEvent"("revisionId", "kind", "occurrence");

-- CreateIndex
CREATE INDEX "Link_contactId_idx" ON "Link"("contactId");

-- CreateIndex
CREATE INDEX "Visit_revisionId_idx" ON "Visit"("revisionId");

-- CreateIndex
CREATE INDEX "Visit_linkId_idx" ON "Visit"("linkId");

-- CreateIndex
CREATE UNIQUE INDEX "Answer_idempotencyKey_key" ON "Answer"("idempotencyKey");

-- CreateIndex
CREATE INDEX "Answer_revisionId_contactId_idx" ON "Answer"("revisionId", "contactId");

-- CreateIndex
CREATE INDEX "Remark_revisionId_idx" ON "Remark"("revisionId");

-- CreateIndex
CREATE UNIQUE INDEX "RecordEntry_jobId_seq_key" ON "RecordEntry"("jobId", "seq");

-- CreateIndex
CREATE UNIQUE INDEX "Erasure_erasedTable_erasedRowId_key" ON "Erasure"("erasedTable", "erasedRowId");

-- CreateIndex
CREATE UNIQUE INDEX "Outbox_messageId_key" ON "Outbox"("messageId");

-- CreateIndex
CREATE INDEX "Outbox_state_dueAt_idx" ON "Outbox"("state", "dueAt");

-- CreateIndex
CREATE INDEX "Outbox_jobId_idx" ON "Outbox"("jobId");
