import { mkdir, open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { createTransport, type SendMailOptions } from 'nodemailer';
import { environment } from '../env/environment';
import { syncFolder } from '../files/sync-folder';
import type { MailMessage } from './mail-message';

/** How a message left: handed to a mail server, or written into the mail folder because none is set. */
export type SentBy = 'smtp' | 'file';

export type Sending =
  | { ok: true; sentBy: SentBy }
  /** `final`: trying again cannot help. `error` is a code and a status, never an address or words of a person. */
  | { ok: false; final: boolean; error: string };

// RFC 5321, section 4.5.3.2 lets each step take minutes; a claim on a message must outlive all of them together.
const patienceMs = { connectionTimeout: 20_000, greetingTimeout: 20_000, dnsTimeout: 20_000, socketTimeout: 60_000 };

/** The message for the library. It may fetch nothing: a path or an address in somebody's words stays words. */
function optionsOf({ messageId, date, from, to, replyTo, subject, text, html }: MailMessage): SendMailOptions {
  return {
    messageId,
    date,
    from,
    to,
    replyTo: replyTo ?? undefined,
    subject,
    text,
    html,
    // RFC 3834, section 5.1: nobody's holiday notice should answer.
    headers: { 'Auto-Submitted': 'auto-generated' },
    disableFileAccess: true,
    disableUrlAccess: true,
  };
}

function faultOf(error: unknown): { final: boolean; error: string } {
  const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
  const status = error instanceof Error && 'responseCode' in error ? Number(error.responseCode) : 0;
  // RFC 5321, section 4.2.1: a 5yz answer to the message itself will not change. One to signing in may, once the shop
  // corrects its SMTP_URL.
  const final = status >= 500 && (code === 'EENVELOPE' || code === 'EMESSAGE');
  return { final, error: status ? `${code} ${status}` : code };
}

async function sendOverSmtp(url: string, message: MailMessage): Promise<Sending> {
  const transport = createTransport({ url, ...patienceMs });
  try {
    await transport.sendMail(optionsOf(message));
    return { ok: true, sentBy: 'smtp' };
  } catch (error) {
    return { ok: false, ...faultOf(error) };
  } finally {
    transport.close();
  }
}

/** Writes a message as a file any mail program opens (RFC 5322, lines ended as on the wire). A second try writes the same file. */
async function writeMailFile(folder: string, message: MailMessage): Promise<Sending> {
  const transport = createTransport({ streamTransport: true, buffer: true, newline: 'windows' });
  const { message: bytes } = await transport.sendMail(optionsOf(message));
  if (!Buffer.isBuffer(bytes)) throw new Error('The mail library did not hand over a whole message.');
  const stamp = message.date
    .toISOString()
    .replace(/\.\d+Z$/, 'Z')
    .replaceAll(':', '-');
  const name = `${stamp} ${message.messageId.replace(/^<([^@]+).*$/, '$1')}.eml`;
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const beside = join(folder, `.${name}.part`);
  const file = await open(beside, 'w', 0o600);
  await file.writeFile(bytes);
  await file.sync();
  await file.close();
  await rename(beside, join(folder, name));
  await syncFolder(folder);
  return { ok: true, sentBy: 'file' };
}

/** Sends one message, over SMTP where a server is set and as a file otherwise. */
export async function sendMail(message: MailMessage): Promise<Sending> {
  const { smtpUrl, mailDir } = environment();
  if (smtpUrl !== null) return sendOverSmtp(smtpUrl, message);
  try {
    return await writeMailFile(mailDir, message);
  } catch (error) {
    return { ok: false, ...faultOf(error) };
  }
}
