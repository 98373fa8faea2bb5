import type { Spot } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import type { ShownPicture } from './fetch-preview';
import { LONGEST_PART_PX, usePart } from './use-part';

type PictureLayerProps = {
  artId: string;
  steps: readonly MendStep[];
  picture: ShownPicture;
  /** The part that is looked at closely; null while the small copy will do. */
  seen: Spot | null;
};

/** A picture in its own px. Where a part of it is magnified, that part's own pixels are laid over the small copy. */
export function PictureLayer({ artId, steps, picture, seen }: PictureLayerProps) {
  const { src, widthPx, heightPx } = picture;
  const isSmallCopy = Math.max(widthPx, heightPx) > LONGEST_PART_PX;
  const part = usePart(artId, steps, isSmallCopy && seen && isSendable(seen) ? seen : null);
  return (
    <>
      <image href={src} width={widthPx} height={heightPx} preserveAspectRatio="none" />
      {part ? <image href={part.src} {...part.box} preserveAspectRatio="none" /> : null}
    </>
  );
}

/** More than this is still seen from further away than the small copy's own pixels. */
function isSendable({ width, height }: Spot): boolean {
  return width <= LONGEST_PART_PX && height <= LONGEST_PART_PX;
}
