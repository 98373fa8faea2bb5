import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** GET /up answers while the pages do: for whatever watches over the server. The bench takes it for the empty page. */
export default function UpPage() {
  return <p>{translatorFor(defaultLocale, 'site')('up')}</p>;
}
