import { FormNotice } from '@/components/ui/form-notice';
import { translatorFor } from '@/lib/messages/translator';
import { environment } from '@/lib/server/env/environment';
import { reach } from '@/lib/server/links/reach';
import type { Shop } from '@/lib/server/shop/read-shop';

/** How far the shop's links reach, and what to do where that is not everywhere. */
export function ReachLine({ shop }: { shop: Shop }) {
  const t = translatorFor(shop.locale, 'send.reach');
  const { publicUrl: url } = environment();
  const far = reach(url);
  if (far === 'everywhere') return null;
  return (
    <FormNotice kind="look" title={t(far)}>
      <p>{t(`${far}Text`, { url })}</p>
    </FormNotice>
  );
}
