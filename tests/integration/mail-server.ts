import { type ParsedMail, simpleParser } from 'mailparser';
import { SMTPServer } from 'smtp-server';

/** A message as a mail server took it in. */
export interface Received {
  readonly raw: Buffer;
  readonly parsed: ParsedMail;
  readonly from: string;
  readonly to: string[];
}

export interface MailServer {
  readonly url: string;
  readonly received: Received[];
  /** What the server says to the next recipients, such as 451 or 550; null to take messages in. */
  refuseWith: number | null;
  close(): Promise<void>;
}

/** A real SMTP server on this computer that keeps what it is sent. */
export async function startMailServer(port = 0): Promise<MailServer> {
  const state: MailServer = { url: '', received: [], refuseWith: null, close: async () => undefined };
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ['STARTTLS'],
    onRcptTo(address, _session, done) {
      if (state.refuseWith === null) return done();
      const refusal = Object.assign(new Error(`mailbox of ${address.address} is not available`), {
        responseCode: state.refuseWith,
      });
      return done(refusal);
    },
    onData(stream, session, done) {
      const chunks: Buffer[] = [];
      stream.on('data', (chunk: Buffer) => chunks.push(chunk));
      stream.on('end', async () => {
        const raw = Buffer.concat(chunks);
        const { mailFrom, rcptTo } = session.envelope;
        const from = mailFrom === false ? '' : mailFrom.address;
        state.received.push({ raw, parsed: await simpleParser(raw), from, to: rcptTo.map(({ address }) => address) });
        done();
      });
    },
  });
  await new Promise<void>((resolve, reject) => {
    server.on('error', reject);
    server.listen(port, '127.0.0.1', () => resolve());
  });
  const address = server.server.address();
  if (typeof address !== 'object' || address === null) throw new Error('The mail server has no port.');
  return Object.assign(state, {
    url: `smtp://127.0.0.1:${address.port}`,
    close: () => new Promise<void>((resolve) => server.close(() => resolve())),
  });
}
