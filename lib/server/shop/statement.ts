import { translatorFor } from '@/lib/messages/translator';
import type { Shop } from './read-shop';

/** What a signer agrees to: the shop's own statement, or the starting one of its language while it has none. */
export function statementOf(shop: Pick<Shop, 'statement' | 'locale'>): string {
  return shop.statement || translatorFor(shop.locale, 'statement')('starting');
}
