import type { SentPicture } from '@/components/customer-art/sent-pictures';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import { artFindings } from '@/lib/domain/art/findings/art-findings';
import { formatLength } from '@/lib/domain/measure/format-length';
import { artFindingWords } from '@/lib/messages/art-finding-words';
import { translatorFor } from '@/lib/messages/translator';
import type { ArtView } from '@/lib/server/art/list-art';
import type { ArtPageView } from '@/lib/server/art/load-art-page';
import type { Shop } from '@/lib/server/shop/read-shop';

/** Notes a customer can do something about, and that no finding says already. */
const TOLD_NOTES = [
  'textLeftOut',
  'linkedPicturesLeftOut',
  'partsLeftOut',
  'fontsReplaced',
  'firstFrameOnly',
  'firstPageOnly',
] as const satisfies readonly ArtNote[];

type Page = Pick<ArtPageView, 'widthUm' | 'cloths'>;

/** At which size and on which cloth pictures are looked at before anybody has placed them. */
export function seenAtWords({ locale, unit }: Shop, { widthUm, cloths }: Page): string {
  const t = translatorFor(locale, 'customer-art.sent');
  const width = formatLength(widthUm, unit);
  if (cloths.length === 0) return t('seenAt', { width });
  const names = new Intl.ListFormat(locale, { type: 'conjunction' }).format(cloths.map(({ name }) => name));
  return t('seenAtOn', { width, cloths: names });
}

/** A picture that was sent, in the customer's words. */
export function sentPicture(shop: Shop, page: Page, token: string, art: ArtView): SentPicture {
  const t = translatorFor(shop.locale, 'customer-art');
  const { artId, name, ref, facts } = art;
  const told = toldOf(shop, page, art);
  const verdict = facts === null ? 'unseen' : told.findings.length === 0 ? 'good' : told.isGrave ? 'look' : 'came';
  return {
    artId,
    src: `/art/${token}/picture/${ref.sha256}.webp`,
    alt: t('sent.alt', { name }),
    widthPx: ref.widthPx,
    heightPx: ref.heightPx,
    name,
    verdict: t(`sent.${verdict}`, { shop: shop.name }),
    kind: verdict === 'look' ? 'look' : 'good',
    findings: told.findings,
  };
}

function toldOf({ locale, unit }: Shop, { widthUm, cloths }: Page, { facts, notes }: ArtView) {
  const t = translatorFor(locale, 'customer-art.note');
  const words = translatorFor(locale, 'art-findings');
  const found = facts ? artFindings(facts, notes, { widthUm, cloths }) : [];
  const told = TOLD_NOTES.filter((note) => notes.includes(note));
  return {
    isGrave: told.length > 0 || found.some(({ severity }) => severity !== 'notes'),
    findings: [
      ...told.map((note) => ({ title: null, text: t(note) })),
      ...found.map((finding) => {
        const { title, customer } = artFindingWords(words, finding, { widthUm, unit });
        return { title, text: customer };
      }),
    ],
  };
}
