import { translatorFor } from '@/lib/messages/translator';
import styles from './reach-shop.module.css';
import type { SheetContext } from './sheet-context';

type ReachShopProps = { context: Pick<SheetContext, 'locale' | 'shop' | 'jobTitle' | 'number'> };

/** Ways to speak with the shop, each a press away on a phone. Addresses: RFC 3966 (tel), 5724 (sms), 6068 (mailto). */
export function ReachShop({ context: { locale, shop, jobTitle, number } }: ReachShopProps) {
  const t = translatorFor(locale, 'proof');
  const dialled = shop.phone?.replace(/[^\d+]/g, '');
  const about = encodeURIComponent(t('reach.about', { job: jobTitle, number: String(number) }));
  return (
    <ul className={styles.ways}>
      {shop.phone && dialled ? (
        <>
          <li>
            <a href={`tel:${dialled}`}>{t('reach.call', { phone: shop.phone })}</a>
          </li>
          <li>
            <a href={`sms:${dialled}`}>{t('reach.text')}</a>
          </li>
        </>
      ) : null}
      {shop.email ? (
        <li>
          <a href={`mailto:${shop.email}?subject=${about}`}>{t('reach.mail', { email: shop.email })}</a>
        </li>
      ) : null}
      {dialled || shop.email ? null : <li>{t('reach.none')}</li>}
    </ul>
  );
}
