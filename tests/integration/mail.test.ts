import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { reader, write } from '@/lib/server/db/database';
import { deliverDue, retryMinutes } from '@/lib/server/mail/deliver';
import { startMailLoop } from '@/lib/server/mail/mail-loop';
import { enqueueMail } from '@/lib/server/mail/outbox';
import { addJob, type FreshDatabase, freshDatabase } from './database';
import { type Letters, letterhead, makeLetters } from './mail-fixtures';
import { type MailServer, type Received, startMailServer } from './mail-server';

const now = new Date('2026-09-01T10:00:00.000Z');
const minutesOn = (minutes: number, from = now) => new Date(from.getTime() + minutes * 60_000);

let server: MailServer;
let fresh: FreshDatabase;
let jobId: string;
let letters: Letters;

beforeAll(async () => {
  server = await startMailServer();
  fresh = await freshDatabase({
    PUBLIC_URL: 'https://proofs.example.org',
    SMTP_URL: server.url,
    MAIL_FROM: 'Yokemark <shop@otterbank.example.org>',
  });
  jobId = await write((tx) => addJob(tx, now));
});
afterAll(async () => {
  await fresh.remove();
  await server.close();
});
beforeEach(async () => {
  await write((tx) => tx.outbox.deleteMany());
  letters = makeLetters();
  server.received.length = 0;
  server.refuseWith = null;
});

const deliver = (at = now) => deliverDue(letters.loaders, at);
const rowOf = (id: string) => reader().outbox.findUniqueOrThrow({ where: { id } });

function onlyMessage(): Received {
  expect(server.received).toHaveLength(1);
  const [message] = server.received;
  if (!message) throw new Error('no message');
  return message;
}

describe('a message to a customer', () => {
  it('arrives with the link, what to do and by when, as text and as a page', async () => {
    const id = await letters.revisionSent(jobId, now, { note: 'I moved the crest up.\nIs it right?' });
    expect(await deliver()).toEqual({ sent: 1, putOff: 0, gaveUp: 0, notNeeded: 0 });
    const { parsed, from, to } = onlyMessage();

    expect([from, to]).toEqual(['shop@otterbank.example.org', ['wren@example.org']]);
    expect(parsed.subject).toBe('Otterbank Press: please look at Autumn relay shirts');
    expect(parsed.from?.value).toEqual([{ name: 'Otterbank Press', address: 'shop@otterbank.example.org' }]);
    expect(parsed.replyTo?.value).toEqual([{ name: '', address: 'marit@otterbank.example.org' }]);
    expect(parsed.to).toMatchObject({ value: [{ name: 'Wren Abara', address: 'wren@example.org' }] });
    expect(parsed.text).toContain('Hello Wren Abara,');
    expect(parsed.text).toContain('say yes, or say what to change');
    expect(parsed.text).toContain('\nhttps://proofs.example.org/proof/TheTokenOfWren\n');
    expect(parsed.text).toContain('needed by Saturday, October 3, 2026');
    expect(parsed.text).toContain('> I moved the crest up.\n> Is it right?');
    expect(parsed.html).toContain('href="https://proofs.example.org/proof/TheTokenOfWren"');
    expect(parsed.html).toContain('I moved the crest up.<br>Is it right?');

    expect(parsed.messageId).toBe(`<${id}@otterbank.example.org>`);
    expect(parsed.date).toEqual(now);
    // RFC 3834, section 5.1.
    expect(parsed.headers.get('auto-submitted')).toBe('auto-generated');
    expect(await rowOf(id)).toMatchObject({ state: 'sent', sentBy: 'smtp', sentAt: now, attempts: 1, lastError: null });
  });

  it('carries no link, name or address in the outbox, before and after', async () => {
    const id = await letters.revisionSent(jobId, now);
    const before = await rowOf(id);
    await deliver();
    for (const row of [before, await rowOf(id)]) {
      expect(JSON.stringify(row)).not.toMatch(/wren|proof|TheToken|Otterbank Press|relay/i);
    }
  });

  it('says of a later revision that it takes the place of the earlier one', async () => {
    await letters.revisionSent(jobId, now, { revisionNumber: 2 });
    await deliver();
    const { parsed } = onlyMessage();
    expect(parsed.subject).toBe('Otterbank Press: Autumn relay shirts, drawn again for you');
    expect(parsed.text).toContain('This takes the place of what you saw before.');
    expect(parsed.text).toContain('Rev 2');
  });

  it('cannot be given another recipient, header or tag by what somebody typed', async () => {
    await letters.revisionSent(jobId, now, {
      to: { name: 'Wren" <evil@example.org>\r\nBcc: evil@example.org', email: 'wren@example.org' },
      shopName: 'Otter\r\nX-Evil: yes\r\n\r\nHello',
      jobTitle: 'Shirts\u2028Bcc: evil@example.org\u0000 <script>alert("&")</script>',
      note: '/etc/passwd\n<img src="https://evil.example.org/x.png">',
    });
    await deliver();
    const { parsed, raw, to } = onlyMessage();
    expect(to).toEqual(['wren@example.org']);
    const header = raw.toString().split('\r\n\r\n')[0] ?? '';
    const names = header
      .split('\r\n')
      .filter((line) => !/^\s/.test(line))
      .map((line) => line.split(':')[0]?.toLowerCase());
    expect(names).not.toContain('bcc');
    expect(names).not.toContain('x-evil');
    expect(parsed.subject).toBe(
      'Otter X-Evil: yes Hello: please look at Shirts Bcc: evil@example.org <script>alert("&")</script>',
    );
    expect(parsed.html).not.toMatch(/<(script|img)/);
    expect(parsed.html).toContain('&lt;img src=&quot;https://evil.example.org/x.png&quot;&gt;');
    expect(parsed.attachments).toEqual([]);
  });

  it('keeps every line within 998 octets (RFC 5322, section 2.1.1) and every character', async () => {
    const note = `${'long '.repeat(1000)}Zoë Nguyễn Łukasz 山 🦦 ${'x'.repeat(3000)}`;
    await letters.revisionSent(jobId, now, { note, jobTitle: '山'.repeat(300) });
    await deliver();
    const { parsed, raw } = onlyMessage();
    const lines = raw.toString('latin1').split('\r\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(998);
    expect(raw.toString('latin1').replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(parsed.text).toContain(`> ${note}`);
    expect([...(parsed.subject ?? '')]).toHaveLength(200);
  });

  it.each([
    ['there is nothing to say any more', null],
    ['the address is none', { to: { name: 'Wren', email: 'wren' } }],
    [
      'the address is longer than 254 characters (RFC 5321, section 4.5.3.1.3)',
      {
        to: {
          name: 'Wren',
          email: `${'w'.repeat(60)}@${'a'.repeat(60)}.${'b'.repeat(60)}.${'c'.repeat(60)}.example.org`,
        },
      },
    ],
    ['the address is two', { to: { name: 'Wren', email: 'wren@example.org, evil@example.org' } }],
  ])('is not sent when %s, and is not tried again', async (_why, over) => {
    const id = await letters.revisionSent(jobId, now, over);
    expect(await deliver()).toMatchObject({ notNeeded: 1 });
    expect(await deliver(minutesOn(10_000))).toEqual({ sent: 0, putOff: 0, gaveUp: 0, notNeeded: 0 });
    expect((await rowOf(id)).state).toBe('notNeeded');
    expect(server.received).toEqual([]);
  });
});

describe('other messages', () => {
  it('tell the maker what a customer answered', async () => {
    await write((tx) => enqueueMail(tx, { jobId, template: 'answerReceived', ids: { answerId: 'a' } }, now));
    await deliver();
    const { parsed } = onlyMessage();
    expect(parsed.subject).toBe('Wren Abara asks for a change to Autumn relay shirts, Rev 1');
    expect(parsed.text).toContain('> The crest an inch lower, please.\n> And a bit smaller.');
    expect(parsed.text).toContain('https://proofs.example.org/jobs/1');
  });

  it('tell a customer what the shop recorded for them', async () => {
    await write((tx) => enqueueMail(tx, { jobId, template: 'answerRecorded', ids: { answerId: 'a' } }, now));
    await deliver();
    const { parsed } = onlyMessage();
    expect(parsed.subject).toBe('Otterbank Press noted your yes to Autumn relay shirts');
    expect(parsed.text).toContain('you said yes to Autumn relay shirts by phone on Wednesday, September 2, 2026.');
  });

  it('are not sent when what they tell of was rolled back', async () => {
    const failed = write(async (tx) => {
      await enqueueMail(tx, { jobId, template: 'answerReceived', ids: { answerId: 'a' } }, now);
      throw new Error('changed its mind');
    });
    await expect(failed).rejects.toThrow('changed its mind');
    expect(await deliver()).toMatchObject({ sent: 0 });
  });
});

describe('a mail server that does not take a message', () => {
  it('for now is asked again later, with the same Message-ID', async () => {
    const id = await letters.revisionSent(jobId, now);
    server.refuseWith = 451;
    expect(await deliver()).toMatchObject({ putOff: 1 });
    expect(await rowOf(id)).toMatchObject({ state: 'waiting', dueAt: minutesOn(1), lastError: 'EENVELOPE 451' });
    server.refuseWith = null;
    expect(await deliver(minutesOn(0.5))).toMatchObject({ sent: 0 });
    expect(await deliver(minutesOn(1))).toMatchObject({ sent: 1 });
    expect(onlyMessage().parsed.messageId).toBe((await rowOf(id)).messageId);
    expect(await rowOf(id)).toMatchObject({ state: 'sent', attempts: 2, lastError: null });
  });

  it('for good is not asked again, and nothing of what it said is kept but the number', async () => {
    const id = await letters.revisionSent(jobId, now);
    server.refuseWith = 550;
    expect(await deliver()).toMatchObject({ gaveUp: 1 });
    expect(await rowOf(id)).toMatchObject({ state: 'gaveUp', lastError: 'EENVELOPE 550', sentAt: null });
    server.refuseWith = null;
    expect(await deliver(minutesOn(10_000))).toMatchObject({ sent: 0 });
  });

  it('is given up after the last try, and not before', async () => {
    const id = await letters.revisionSent(jobId, now);
    server.refuseWith = 421;
    let at = now;
    for (const minutes of retryMinutes) {
      expect(await deliver(at)).toMatchObject({ putOff: 1 });
      at = minutesOn(minutes, at);
    }
    expect(await deliver(at)).toMatchObject({ gaveUp: 1 });
    expect(await rowOf(id)).toMatchObject({ state: 'gaveUp', attempts: retryMinutes.length + 1 });
  });

  it('is found again when it comes back', async () => {
    const id = await letters.revisionSent(jobId, now);
    const { port } = new URL(server.url);
    await server.close();
    expect(await deliver()).toMatchObject({ putOff: 1 });
    expect((await rowOf(id)).lastError).toMatch(/ECONN|ESOCKET/);
    server = await startMailServer(Number(port));
    expect(await deliver(minutesOn(1))).toMatchObject({ sent: 1 });
    expect(onlyMessage().to).toEqual(['wren@example.org']);
  });
});

describe('the outbox', () => {
  it('sends each message once when two work it off at the same time', async () => {
    for (let count = 0; count < 6; count += 1) await letters.revisionSent(jobId, now);
    const [one, other] = await Promise.all([deliver(), deliver()]);
    expect(one.sent + other.sent).toBe(6);
    expect(new Set(server.received.map(({ parsed }) => parsed.messageId)).size).toBe(6);
    expect(server.received).toHaveLength(6);
  });

  it('leaves alone what another is sending, and takes it over when that one has died', async () => {
    const id = await letters.revisionSent(jobId, now);
    await write((tx) => tx.outbox.update({ where: { id }, data: { claimedUntil: minutesOn(10), attempts: 1 } }));
    expect(await deliver(minutesOn(9))).toMatchObject({ sent: 0 });
    expect(await deliver(minutesOn(10))).toMatchObject({ sent: 1 });
    expect(await rowOf(id)).toMatchObject({ state: 'sent', attempts: 2 });
  });

  it('goes on with the next message when one cannot be written out', async () => {
    const broken = await letters.revisionSent(jobId, now, { locale: 'en', timeZone: 'Nowhere/At All' });
    const whole = await letters.revisionSent(jobId, now);
    expect(await deliver()).toMatchObject({ sent: 1, putOff: 1 });
    expect(await rowOf(broken)).toMatchObject({ state: 'waiting', lastError: 'unwritten' });
    expect((await rowOf(whole)).state).toBe('sent');
  });

  it('is worked off by the server as soon as something is put in, until it stops', async () => {
    const arrived = async (count: number) => {
      while (server.received.length < count) await new Promise((resolve) => setTimeout(resolve, 10));
    };
    const soon = new Date();
    await letters.revisionSent(jobId, soon, { jobTitle: 'Waiting from before' });
    const stop = startMailLoop(letters.loaders);
    await arrived(1);
    await letters.revisionSent(jobId, new Date(), { jobTitle: 'Put in while it runs' });
    await arrived(2);
    await stop();
    const last = await letters.revisionSent(jobId, new Date());
    expect((await rowOf(last)).state).toBe('waiting');
    expect(server.received.map(({ parsed }) => parsed.subject)).toEqual([
      `${letterhead.shopName}: please look at Waiting from before`,
      `${letterhead.shopName}: please look at Put in while it runs`,
    ]);
  });
});
