import type { GarmentWords } from './garment-words';
import styles from './size-line.module.css';

/** As many sizes of one garment as the page's styles have rules for; what belongs to any beyond them is always shown. */
export const SIZES_TO_CHOOSE = 40;

type SizeLineProps = {
  words: Pick<GarmentWords, 'garmentId' | 'pick' | 'pickHint' | 'sizes' | 'shownFirst' | 'line'>;
  /** Where its pictures are: `/proof/TOKEN/picture/2`. */
  address: string;
};

/**
 * The line: every size hung side by side at one scale, with how wide it lies. Each is a button that chooses the size shown
 * large: a radio button, so that style alone does it (see garment-section.module.css), without scripts.
 */
export function SizeLine({ words: { garmentId, pick, pickHint, sizes, shownFirst, line }, address }: SizeLineProps) {
  return (
    <fieldset className={styles.line}>
      <legend>{pick}</legend>
      <p className={styles.hint}>{pickHint}</p>
      {line && line.pictures.length > 1 ? <Turn garmentId={garmentId} line={line} /> : null}
      <div className={styles.scroller}>
        <div className={styles.hung}>
          {line?.pictures.map(({ side, file, alt }) => (
            // biome-ignore lint/performance/noImgElement: sealed pictures are served as they are, to whoever has the link.
            <img
              key={side}
              src={`${address}/${file}`}
              width={line.widthPx}
              height={line.heightPx}
              alt={alt}
              loading="lazy"
              data-line={side}
              className={styles.picture}
            />
          ))}
          <div className={styles.places}>
            {sizes.map(({ id, said, chest, inFull }, at) => (
              <label key={id} className={styles.place}>
                <input
                  type="radio"
                  name={`size-${garmentId}`}
                  value={at}
                  defaultChecked={at === shownFirst}
                  aria-label={inFull}
                  data-size={at}
                  className={styles.pick}
                />
                <span className={styles.tag}>{said}</span>
                <span className={styles.width}>{chest}</span>
              </label>
            ))}
          </div>
        </div>
      </div>
    </fieldset>
  );
}

type TurnProps = { garmentId: string; line: NonNullable<GarmentWords['line']> };

/** Which side of the garments on the line is seen. */
function Turn({ garmentId, line: { turn, pictures } }: TurnProps) {
  return (
    <div role="radiogroup" aria-label={turn} className={styles.turn}>
      {pictures.map(({ side, name }, at) => (
        <label key={side}>
          <input
            type="radio"
            name={`side-${garmentId}`}
            value={side}
            defaultChecked={at === 0}
            data-turn={side}
            className={styles.pick}
          />
          <span className={styles.tag}>{name}</span>
        </label>
      ))}
    </div>
  );
}
