import { afterCommit } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { environment } from '../env/environment';
import type { MailIds, MailTemplate } from './mail-data';
import { addressOf } from './mail-message';
import { nudgeMail } from './nudge';

/**
 * Puts a message into the outbox, inside the transaction of what it tells about: both are kept or neither. It is rendered
 * when it is sent, from the ids. Its Message-ID (RFC 5322, section 3.6.4) is set here, so that a second try after a lost
 * answer is the same message to whoever receives it.
 */
export async function enqueueMail<Template extends MailTemplate>(
  tx: Transaction,
  message: { jobId: string; template: Template; ids: MailIds<Template> },
  now: Date,
): Promise<void> {
  const id = newId();
  const domain = addressOf(environment().mailFrom).split('@').at(-1);
  await tx.outbox.create({
    data: {
      id,
      jobId: message.jobId,
      channel: 'mail',
      template: message.template,
      idsJson: JSON.stringify(message.ids),
      messageId: `<${id}@${domain}>`,
      state: 'waiting',
      attempts: 0,
      dueAt: now,
      createdAt: now,
    },
  });
  afterCommit(nudgeMail);
}
