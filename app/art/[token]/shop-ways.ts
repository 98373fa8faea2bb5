import type { ReachWords } from '@/components/proof/reach-words';
import { translatorFor } from '@/lib/messages/translator';
import type { Shop } from '@/lib/server/shop/read-shop';

/** Ways to speak with the shop about a picture (RFC 3966, tel; RFC 5724, sms; RFC 6068, mailto). */
export function shopWays({ locale, name, replyEmail, replyPhone }: Shop, jobTitle: string): ReachWords {
  const t = translatorFor(locale, 'proof.reach');
  const dialled = replyPhone?.replace(/[^\d+]/g, '');
  const about = encodeURIComponent(jobTitle);
  const ways = [
    ...(replyPhone && dialled
      ? [
          { href: `tel:${dialled}`, text: t('call', { phone: replyPhone }) },
          { href: `sms:${dialled}`, text: t('text') },
        ]
      : []),
    ...(replyEmail ? [{ href: `mailto:${replyEmail}?subject=${about}`, text: t('mail', { email: replyEmail }) }] : []),
  ];
  return { title: t('title', { shop: name }), ways, none: ways.length === 0 ? t('none') : null };
}
