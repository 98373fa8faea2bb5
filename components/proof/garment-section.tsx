import { Fragment } from 'react';
import styles from './garment-section.module.css';
import type { GarmentWords, SideWords } from './garment-words';

/** As many sizes of one garment as the style sheet has rules for; pictures of any beyond them are always shown. */
const SIZES_TO_CHOOSE = 40;

type Pictures = {
  /** Where its pictures are: `/proof/TOKEN/picture/2`. */
  readonly address: string;
  /** All of them have this size in px: they are at one scale. */
  readonly widthPx: number;
  readonly heightPx: number;
};

type GarmentSectionProps = { words: GarmentWords; pictures: Pictures };

/**
 * One garment: its sides on the size that is chosen, all sizes at one scale, and what the tape reads on every size. The
 * size is chosen by style alone, without scripts: see the style sheet.
 */
export function GarmentSection({ words, pictures }: GarmentSectionProps) {
  const name = `size-${words.garmentId}`;
  return (
    <section className={styles.garment}>
      <h2>{words.title}</h2>
      <p className={styles.total}>{words.inAll}</p>
      <fieldset className={styles.sizes}>
        <legend>{words.pick}</legend>
        <p className={styles.hint}>{words.pickHint}</p>
        {words.sizes.map(({ id, said }, at) => (
          <Fragment key={id}>
            <input
              type="radio"
              id={`${name}-${at}`}
              name={name}
              value={at}
              defaultChecked={at === words.shownFirst}
              className={styles.pick}
            />
            <label htmlFor={`${name}-${at}`} className={styles.label}>
              {said}
            </label>
          </Fragment>
        ))}
      </fieldset>
      <p>
        {words.sizes.map(({ id, chestSentence }, at) => (
          <span key={id} data-sizes={at} className={ofSize(at)}>
            {chestSentence}
          </span>
        ))}
      </p>
      <div className={styles.sides}>
        {words.sides.map((side) => (
          <SideFigure key={side.side} side={side} words={words} pictures={pictures} />
        ))}
      </div>
    </section>
  );
}

function ofSize(at: number): string | undefined {
  return at < SIZES_TO_CHOOSE ? styles.ofSize : undefined;
}

type SideFigureProps = GarmentSectionProps & { side: SideWords };

/** One side as it was sealed, and under it what the tape says in words. */
function SideFigure({ side, words, pictures: { address, widthPx, heightPx } }: SideFigureProps) {
  return (
    <figure className={styles.side}>
      <h3>{side.name}</h3>
      <p className={styles.scale}>{words.drawnToScale}</p>
      {side.pictures.map(({ size, sceneSha256, alt }) => (
        // biome-ignore lint/performance/noImgElement: sealed pictures are served as they are, to whoever has the link.
        <img
          key={size}
          src={`${address}/${sceneSha256}.webp`}
          width={widthPx}
          height={heightPx}
          alt={alt}
          loading="lazy"
          data-sizes={size}
          className={ofSize(size)}
        />
      ))}
      <figcaption>
        {side.prints.map(({ printId, title, rows }) => (
          <table key={printId} className={styles.readings}>
            <caption>{title}</caption>
            <tbody>
              {rows.map(({ of, sizes, howBig, where }) => (
                <tr key={of} data-sizes={of}>
                  <th scope="row">{sizes}</th>
                  <td>
                    {howBig}
                    <span>{where}</span>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
        {side.prints.length === 0 ? <p>{words.nothingHere}</p> : null}
      </figcaption>
    </figure>
  );
}
