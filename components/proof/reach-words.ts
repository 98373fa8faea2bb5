import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** How the shop can be reached. */
export type ShopReach = { readonly name: string; readonly email: string | null; readonly phone: string | null };

/** Ways to speak with the shop, each a press away on a phone; with none, what to do instead. */
export type ReachWords = {
  readonly title: string;
  readonly ways: readonly { readonly href: string; readonly text: string }[];
  readonly none: string | null;
};

/** The ways to a shop. Addresses: RFC 3966 (tel), RFC 5724 (sms), RFC 6068 (mailto). `number` is the revision's. */
export function reachWords(
  locale: Locale,
  { shop, jobTitle, number }: { shop: ShopReach; jobTitle: string; number: number },
): ReachWords {
  const t = translatorFor(locale, 'proof');
  const dialled = shop.phone?.replace(/[^\d+]/g, '');
  const about = encodeURIComponent(t('reach.about', { job: jobTitle, number: String(number) }));
  const ways = [
    ...(shop.phone && dialled
      ? [
          { href: `tel:${dialled}`, text: t('reach.call', { phone: shop.phone }) },
          { href: `sms:${dialled}`, text: t('reach.text') },
        ]
      : []),
    ...(shop.email
      ? [{ href: `mailto:${shop.email}?subject=${about}`, text: t('reach.mail', { email: shop.email }) }]
      : []),
  ];
  return { title: t('reach.title', { shop: shop.name }), ways, none: ways.length === 0 ? t('reach.none') : null };
}
