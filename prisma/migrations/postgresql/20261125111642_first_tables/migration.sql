-- CreateTable
CREATE TABLE "Shop" (
    "id" TEXT NOT NULL,
    "slot" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "locale" TEXT NOT NULL,
    "statement" TEXT NOT NULL,
    "replyEmail" TEXT,
    "replyPhone" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Shop_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL,
    "image" TEXT,
    "role" TEXT NOT NULL,
    "ownerOf" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "User_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Account" (
    "id" TEXT NOT NULL,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" TIMESTAMP(3),
    "refreshTokenExpiresAt" TIMESTAMP(3),
    "scope" TEXT,
    "password" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Verification" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Verification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RateLimit" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL,

    CONSTRAINT "RateLimit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Customer" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT,
    "phone" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Customer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Job" (
    "id" TEXT NOT NULL,
    "customerId" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "occasion" TEXT NOT NULL,
    "notes" TEXT NOT NULL,
    "neededByLocal" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "neededAt" TIMESTAMP(3) NOT NULL,
    "recordSeq" INTEGER NOT NULL,
    "recordHead" TEXT NOT NULL,
    "searchText" TEXT NOT NULL,
    "archivedAt" TIMESTAMP(3),
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Job_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Contact" (
    "id" TEXT NOT NULL,
    "jobId" TEXT NOT NULL,
    "name" TEXT,
    "email" TEXT,
    "phone" TEXT,
    "maySign" BOOLEAN NOT NULL,
    "mayRemark" BOOLEAN NOT NULL,
    "mayCorrect" BOOLEAN NOT NULL,
    "mayCollect" BOOLEAN NOT NULL,
    "mustSign" BOOLEAN NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Contact_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Draft" (
    "jobId" TEXT NOT NULL,
    "format" INTEGER NOT NULL,
    "json" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Draft_pkey" PRIMARY KEY ("jobId")
);

-- CreateTable
CREATE TABLE "Person" (
    "id" TEXT NOT NULL,
    "jobId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "fieldsJson" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Item" (
    "id" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "garmentKey" TEXT NOT NULL,
    "blankKey" TEXT NOT NULL,
    "sizeKey" TEXT NOT NULL,
    "quantity" INTEGER NOT NULL,

    CONSTRAINT "Item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "File" (
    "sha256" TEXT NOT NULL,
    "byteLength" INTEGER NOT NULL,
    "mediaType" TEXT NOT NULL,
    "widthPx" INTEGER,
    "heightPx" INTEGER,
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "File_pkey" PRIMARY KEY ("sha256")
);

-- CreateTable
CREATE TABLE "Art" (
    "id" TEXT NOT NULL,
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
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Art_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ArtLabel" (
    "artId" TEXT NOT NULL,
    "name" TEXT NOT NULL,

    CONSTRAINT "ArtLabel_pkey" PRIMARY KEY ("artId")
);

-- CreateTable
CREATE TABLE "Font" (
    "sha256" TEXT NOT NULL,
    "byteLength" INTEGER NOT NULL,
    "family" TEXT NOT NULL,
    "style" TEXT NOT NULL,
    "origin" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Font_pkey" PRIMARY KEY ("sha256")
);

-- CreateTable
CREATE TABLE "Blank" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "fabric" TEXT NOT NULL,
    "chartSource" TEXT NOT NULL,
    "toleranceAcrossUm" INTEGER NOT NULL,
    "toleranceAlongUm" INTEGER NOT NULL,
    "archivedAt" TIMESTAMP(3),
    "createdAt" TIMESTAMP(3) NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Blank_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "BlankSize" (
    "id" TEXT NOT NULL,
    "blankId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "label" TEXT NOT NULL,
    "band" TEXT NOT NULL,
    "measuresJson" TEXT NOT NULL,

    CONSTRAINT "BlankSize_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "BlankColour" (
    "id" TEXT NOT NULL,
    "blankId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "hex" TEXT NOT NULL,
    "heather" BOOLEAN NOT NULL,

    CONSTRAINT "BlankColour_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Revision" (
    "id" TEXT NOT NULL,
    "jobId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "format" INTEGER NOT NULL,
    "seal" TEXT NOT NULL,
    "envelope" BYTEA NOT NULL,
    "previousSeal" TEXT,
    "reason" TEXT NOT NULL,
    "draftVersion" INTEGER NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Revision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RevisionLine" (
    "id" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "salt" BYTEA NOT NULL,
    "bytes" BYTEA NOT NULL,

    CONSTRAINT "RevisionLine_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RevisionScene" (
    "id" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "garment" TEXT NOT NULL,
    "blank" TEXT NOT NULL,
    "size" TEXT NOT NULL,
    "side" TEXT NOT NULL,
    "line" TEXT NOT NULL,
    "hash" TEXT NOT NULL,

    CONSTRAINT "RevisionScene_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Drawing" (
    "sha256" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,

    CONSTRAINT "Drawing_pkey" PRIMARY KEY ("sha256")
);

-- CreateTable
CREATE TABLE "PersonalDrawing" (
    "sceneId" TEXT NOT NULL,
    "salt" BYTEA NOT NULL,
    "bytes" BYTEA NOT NULL,

    CONSTRAINT "PersonalDrawing_pkey" PRIMARY KEY ("sceneId")
);

-- CreateTable
CREATE TABLE "RevisionView" (
    "revisionId" TEXT NOT NULL,
    "json" TEXT NOT NULL,
    "madeAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "RevisionView_pkey" PRIMARY KEY ("revisionId")
);

-- CreateTable
CREATE TABLE "RevisionPicture" (
    "id" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "mediaType" TEXT NOT NULL,
    "widthPx" INTEGER NOT NULL,
    "heightPx" INTEGER NOT NULL,
    "madeAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "RevisionPicture_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RevisionEvent" (
    "id" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "occurrence" INTEGER NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "RevisionEvent_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Link" (
    "id" TEXT NOT NULL,
    "contactId" TEXT NOT NULL,
    "generation" INTEGER NOT NULL,
    "keyVersion" INTEGER NOT NULL,
    "mayJson" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "revokedAt" TIMESTAMP(3),
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Link_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Visit" (
    "id" TEXT NOT NULL,
    "linkId" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "openedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Visit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Answer" (
    "id" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "contactId" TEXT NOT NULL,
    "word" TEXT NOT NULL,
    "how" TEXT NOT NULL,
    "ticksJson" TEXT NOT NULL,
    "statementHash" TEXT NOT NULL,
    "identityHash" TEXT NOT NULL,
    "idempotencyKey" TEXT NOT NULL,
    "saidAt" TIMESTAMP(3),
    "recordedById" TEXT,
    "evidenceSha256" TEXT,
    "at" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Answer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "AnswerIdentity" (
    "answerId" TEXT NOT NULL,
    "salt" BYTEA NOT NULL,
    "typedName" TEXT NOT NULL,
    "changeWords" TEXT NOT NULL,
    "clientAddress" TEXT NOT NULL,

    CONSTRAINT "AnswerIdentity_pkey" PRIMARY KEY ("answerId")
);

-- CreateTable
CREATE TABLE "Remark" (
    "id" TEXT NOT NULL,
    "revisionId" TEXT NOT NULL,
    "contactId" TEXT,
    "userId" TEXT,
    "parentId" TEXT,
    "garment" TEXT,
    "side" TEXT,
    "xUm" INTEGER,
    "yUm" INTEGER,
    "doneAt" TIMESTAMP(3),
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Remark_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RemarkBody" (
    "remarkId" TEXT NOT NULL,
    "text" TEXT NOT NULL,

    CONSTRAINT "RemarkBody_pkey" PRIMARY KEY ("remarkId")
);

-- CreateTable
CREATE TABLE "RecordEntry" (
    "id" TEXT NOT NULL,
    "jobId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "payloadHash" TEXT NOT NULL,
    "previousHash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "RecordEntry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RecordPayload" (
    "entryId" TEXT NOT NULL,
    "salt" BYTEA NOT NULL,
    "bytes" BYTEA NOT NULL,

    CONSTRAINT "RecordPayload_pkey" PRIMARY KEY ("entryId")
);

-- CreateTable
CREATE TABLE "Erasure" (
    "id" TEXT NOT NULL,
    "jobId" TEXT NOT NULL,
    "erasedTable" TEXT NOT NULL,
    "erasedRowId" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Erasure_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Outbox" (
    "id" TEXT NOT NULL,
    "jobId" TEXT,
    "channel" TEXT NOT NULL,
    "template" TEXT NOT NULL,
    "idsJson" TEXT NOT NULL,
    "messageId" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "attempts" INTEGER NOT NULL,
    "dueAt" TIMESTAMP(3) NOT NULL,
    "claimedUntil" TIMESTAMP(3),
    "lastError" TEXT,
    "sentBy" TEXT,
    "sentAt" TIMESTAMP(3),
    "createdAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Outbox_pkey" PRIMARY KEY ("id")
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

-- AddForeignKey
ALTER TABLE "User" ADD CONSTRAINT "User_ownerOf_fkey" FOREIGN KEY ("ownerOf") REFERENCES "Shop"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Account" ADD CONSTRAINT "Account_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Job" ADD CONSTRAINT "Job_customerId_fkey" FOREIGN KEY ("customerId") REFERENCES "Customer"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Contact" ADD CONSTRAINT "Contact_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Draft" ADD CONSTRAINT "Draft_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Person" ADD CONSTRAINT "Person_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Item" ADD CONSTRAINT "Item_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Art" ADD CONSTRAINT "Art_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Art" ADD CONSTRAINT "Art_fileSha256_fkey" FOREIGN KEY ("fileSha256") REFERENCES "File"("sha256") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Art" ADD CONSTRAINT "Art_pictureSha256_fkey" FOREIGN KEY ("pictureSha256") REFERENCES "File"("sha256") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Art" ADD CONSTRAINT "Art_parentId_fkey" FOREIGN KEY ("parentId") REFERENCES "Art"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ArtLabel" ADD CONSTRAINT "ArtLabel_artId_fkey" FOREIGN KEY ("artId") REFERENCES "Art"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BlankSize" ADD CONSTRAINT "BlankSize_blankId_fkey" FOREIGN KEY ("blankId") REFERENCES "Blank"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "BlankColour" ADD CONSTRAINT "BlankColour_blankId_fkey" FOREIGN KEY ("blankId") REFERENCES "Blank"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Revision" ADD CONSTRAINT "Revision_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RevisionLine" ADD CONSTRAINT "RevisionLine_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RevisionScene" ADD CONSTRAINT "RevisionScene_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PersonalDrawing" ADD CONSTRAINT "PersonalDrawing_sceneId_fkey" FOREIGN KEY ("sceneId") REFERENCES "RevisionScene"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RevisionView" ADD CONSTRAINT "RevisionView_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RevisionPicture" ADD CONSTRAINT "RevisionPicture_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RevisionEvent" ADD CONSTRAINT "RevisionEvent_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Link" ADD CONSTRAINT "Link_contactId_fkey" FOREIGN KEY ("contactId") REFERENCES "Contact"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Visit" ADD CONSTRAINT "Visit_linkId_fkey" FOREIGN KEY ("linkId") REFERENCES "Link"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Visit" ADD CONSTRAINT "Visit_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Answer" ADD CONSTRAINT "Answer_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Answer" ADD CONSTRAINT "Answer_contactId_fkey" FOREIGN KEY ("contactId") REFERENCES "Contact"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Answer" ADD CONSTRAINT "Answer_recordedById_fkey" FOREIGN KEY ("recordedById") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Answer" ADD CONSTRAINT "Answer_evidenceSha256_fkey" FOREIGN KEY ("evidenceSha256") REFERENCES "File"("sha256") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "AnswerIdentity" ADD CONSTRAINT "AnswerIdentity_answerId_fkey" FOREIGN KEY ("answerId") REFERENCES "Answer"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Remark" ADD CONSTRAINT "Remark_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Remark" ADD CONSTRAINT "Remark_contactId_fkey" FOREIGN KEY ("contactId") REFERENCES "Contact"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Remark" ADD CONSTRAINT "Remark_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Remark" ADD CONSTRAINT "Remark_parentId_fkey" FOREIGN KEY ("parentId") REFERENCES "Remark"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RemarkBody" ADD CONSTRAINT "RemarkBody_remarkId_fkey" FOREIGN KEY ("remarkId") REFERENCES "Remark"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RecordEntry" ADD CONSTRAINT "RecordEntry_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "RecordPayload" ADD CONSTRAINT "RecordPayload_entryId_fkey" FOREIGN KEY ("entryId") REFERENCES "RecordEntry"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Erasure" ADD CONSTRAINT "Erasure_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Outbox" ADD CONSTRAINT "Outbox_jobId_fkey" FOREIGN KEY ("jobId") REFERENCES "Job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
