import { defaultLocale, isLocale } from '@/lib/messages/locales';
import { reader } from '../db/database';
import { environment } from '../env/environment';
import { linkUrl, liveLinks } from '../links/links';
import type { MailLoaders } from '../mail/mail-data';
import { readShop } from '../shop/read-shop';
import { revisionView } from './revision-view';

/** What the messages about revisions and answers say, read at the moment they are sent. */
export const mailLoaders: MailLoaders = {
  async revisionSent({ revisionId, contactId }) {
    const [common, contact] = await Promise.all([
      letterhead(revisionId),
      reader().contact.findUnique({ where: { id: contactId } }),
    ]);
    const url = common && (await urlFor(common.jobId, contactId));
    if (!(common && contact?.email && url)) return null;
    const { note } = await revisionView(revisionId, common.viewMadeAt);
    return { ...common.head, to: { name: contact.name, email: contact.email }, note, neededAt: common.neededAt, url };
  },

  async answerReceived({ answerId }) {
    const answer = await readAnswer(answerId);
    const [common, owner] = await Promise.all([
      answer && letterhead(answer.revisionId),
      reader().user.findFirst({ where: { role: 'owner' }, select: { name: true, email: true } }),
    ]);
    if (!(answer && common && owner)) return null;
    return {
      ...common.head,
      to: owner,
      replyTo: answer.contact.email,
      customerName: answer.contact.name ?? common.customerName,
      word: answer.word === 'yes' ? 'yes' : 'change',
      words: answer.identity?.changeWords ?? '',
      how: routeOf(answer.how),
      url: `${environment().publicUrl}/jobs/${common.jobId}`,
    };
  },

  async answerRecorded({ answerId }) {
    const answer = await readAnswer(answerId);
    const common = answer && (await letterhead(answer.revisionId));
    const how = answer && routeOf(answer.how);
    const url = common && (await urlFor(common.jobId, answer.contactId));
    if (!(answer?.contact.email && common && url) || !how || how === 'link') return null;
    return {
      ...common.head,
      to: { name: answer.contact.name, email: answer.contact.email },
      word: answer.word === 'yes' ? 'yes' : 'change',
      words: answer.identity?.changeWords ?? '',
      how,
      saidAt: answer.saidAt ?? answer.at,
      url,
    };
  },
};

function readAnswer(answerId: string) {
  return reader().answer.findUnique({ where: { id: answerId }, include: { contact: true, identity: true } });
}

async function letterhead(revisionId: string) {
  const [shop, revision] = await Promise.all([
    readShop(),
    reader().revision.findUnique({
      where: { id: revisionId },
      select: {
        number: true,
        view: { select: { madeAt: true } },
        job: { include: { customer: { select: { name: true } } } },
      },
    }),
  ]);
  if (!(shop && revision?.view)) return null;
  const { job, number, view } = revision;
  return {
    jobId: job.id,
    customerName: job.customer.name,
    neededAt: job.neededAt,
    viewMadeAt: view.madeAt,
    head: {
      locale: isLocale(shop.locale) ? shop.locale : defaultLocale,
      timeZone: job.timeZone,
      shopName: shop.name,
      replyTo: shop.replyEmail,
      jobTitle: job.title,
      revisionNumber: number,
    },
  };
}

async function urlFor(jobId: string, contactId: string): Promise<string | null> {
  const link = (await liveLinks(jobId)).get(contactId);
  return link ? linkUrl(link) : null;
}

function routeOf(how: string): 'link' | 'text' | 'phone' | 'counter' {
  return how === 'text' || how === 'phone' || how === 'counter' ? how : 'link';
}
