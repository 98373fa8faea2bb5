import type { GarmentWords, SidePicture } from './garment-words';
import styles from './photographed-picture.module.css';

type PhotographedPictureProps = {
  /** The picture as drawn, with one on the shop's photograph beside it. */
  picture: SidePicture & { readonly photograph: NonNullable<SidePicture['photograph']> };
  words: NonNullable<GarmentWords['photographs']>;
  /** Where the pictures of its revision are. */
  address: string;
  widthPx: number;
  heightPx: number;
  /** Unique on the page: garment and side. */
  name: string;
};

/** A side that can be looked at as drawn or on the shop's photograph, as drawn first. Chosen by style alone, without scripts. */
export function PhotographedPicture({ picture, words, address, widthPx, heightPx, name }: PhotographedPictureProps) {
  const { size, sceneSha256, alt, photograph } = picture;
  const shown = { width: widthPx, height: heightPx, loading: 'lazy' } as const;
  return (
    <div className={styles.shownAs}>
      <fieldset className={styles.switch}>
        <legend className="visually-hidden">{words.legend}</legend>
        {(['drawn', 'photograph'] as const).map((as) => (
          <label key={as}>
            <input
              type="radio"
              name={`as-${name}-${size}`}
              value={as}
              defaultChecked={as === 'drawn'}
              data-as={as}
              className={styles.pick}
            />
            <span className={styles.tag}>{words[as]}</span>
          </label>
        ))}
      </fieldset>
      {/* biome-ignore lint/performance/noImgElement: sealed pictures are served as they are, to whoever has the link. */}
      <img src={`${address}/${sceneSha256}.webp`} alt={alt} {...shown} className={styles.drawn} />
      <div className={styles.onPhotograph}>
        {/* biome-ignore lint/performance/noImgElement: as above. */}
        <img src={`${address}/${photograph.file}`} alt={photograph.alt} {...shown} />
        <p className={styles.sentence}>{words.sentence}</p>
      </div>
    </div>
  );
}
