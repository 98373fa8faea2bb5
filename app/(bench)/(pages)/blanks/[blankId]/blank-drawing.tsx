import { DrawnBlank } from '@/components/blanks/drawn-blank';
import { SceneSvg } from '@/components/flat/scene-svg';
import { pictureFrame } from '@/lib/domain/layout/picture-frame';
import { composeScene, shownSides } from '@/lib/domain/layout/scene';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import type { BlankView } from '@/lib/server/blanks/load-blank';
import type { Shop } from '@/lib/server/shop/read-shop';
import { blankToDraw, DRAWN_ID, layoutOf } from '../drawn-layout';

type Chosen = { readonly size?: string | string[]; readonly colour?: string | string[] };
type BlankDrawingProps = { shop: Shop; blank: BlankView; chosen: Chosen };

/** The flat of a blank, front and back, in the size and colour that were chosen. All its sizes are at one scale. */
export function BlankDrawing({ shop, blank, chosen }: BlankDrawingProps) {
  const t = translatorFor(shop.locale, 'blanks.flat');
  const readings = translatorFor(shop.locale, 'readings');
  const { style, blankId } = blank;
  const { ageBand, kind, sizes, colours } = style;
  const drawn = blankToDraw(style);
  const size = sizes.find(({ sizeId }) => sizeId === chosen.size) ?? sizes[Math.floor(sizes.length / 2)];
  const colour = colours.find(({ colourId }) => colourId === chosen.colour) ?? colours[0];
  if (!(drawn && size)) return <p>{t('none')}</p>;
  const layout = layoutOf(drawn, style, colour);
  const sides = shownSides(layout, DRAWN_ID, kind);
  const scenesOf = (sizeId: string) =>
    sides.map((side) =>
      composeScene(layout, { garmentId: DRAWN_ID, size: { blankId: DRAWN_ID, sizeId }, side, lineId: null }),
    );
  const { box } = pictureFrame(sizes.flatMap(({ sizeId }) => scenesOf(sizeId)));
  const words = (label: string) => sizeWords(readings, { ageBand, label });
  const address = (choice: { sizeId: string; colourId: string | undefined }) => {
    const query = new URLSearchParams({ size: choice.sizeId, ...(choice.colourId && { colour: choice.colourId }) });
    return `/blanks/${blankId}?${query}`;
  };
  return (
    <DrawnBlank
      flats={scenesOf(size.sizeId).map((scene) => (
        <SceneSvg
          key={scene.side}
          scene={scene}
          box={box}
          href={(sha256) => sha256}
          title={t('picture', { side: readings(`side.${scene.side}`), name: style.name, size: words(size.label) })}
        />
      ))}
      caption={t('caption', { size: words(size.label) })}
      sizesLabel={t('size')}
      sizes={sizes.map(({ sizeId, label }) => ({
        key: sizeId,
        words: label,
        href: address({ sizeId, colourId: colour?.colourId }),
        isChosen: sizeId === size.sizeId,
      }))}
      coloursLabel={t('colour')}
      colours={colours.map(({ colourId, name, hex }) => ({
        key: colourId,
        words: name,
        hex,
        href: address({ sizeId: size.sizeId, colourId }),
        isChosen: colourId === colour?.colourId,
      }))}
    />
  );
}
