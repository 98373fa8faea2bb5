// The floor a page is held against: node:http, and the rows of one proof page read with better-sqlite3, sent as they are.
// Arguments: the database's file, the id of a link. Prints its address when it listens.

import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import Database from 'better-sqlite3';

const [file = '', linkId = ''] = process.argv.slice(2);
const database = new Database(file, { readonly: true });

const link = database.prepare(
  `SELECT l.generation, l.keyVersion, l.mayJson, l.expiresAt, l.revokedAt, c.id, c.name, c.jobId
   FROM Link l JOIN Contact c ON c.id = l.contactId WHERE l.id = ?`,
);
const revisions = database.prepare(
  `SELECT s.name AS shopName, s.replyEmail, s.replyPhone, j.title, j.neededAt, j.timeZone, r.id AS revisionId, r.number,
          r.seal, r.createdAt, a.word, a.how, a.at, i.typedName, i.changeWords
   FROM Job j JOIN Shop s ON s.slot = 1 JOIN Revision r ON r.jobId = j.id
   LEFT JOIN Answer a ON a.revisionId = r.id LEFT JOIN AnswerIdentity i ON i.answerId = a.id
   WHERE j.id = ? ORDER BY r.number DESC, a.at`,
);
const view = database.prepare('SELECT json FROM RevisionView WHERE revisionId = ?');

const server = createServer((_request, response) => {
  const opened = link.get(linkId) as { jobId: string };
  const rows = revisions.all(opened.jobId) as { revisionId: string }[];
  const shown = view.get(rows[0]?.revisionId) as { json: string };
  response.writeHead(200, { 'Content-Type': 'application/json' });
  response.end(JSON.stringify({ opened, rows, view: shown.json }));
});
server.listen(0, '127.0.0.1', () => console.log(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`));
