import styles from './garment-section.module.css';
import type { GarmentWords, PrintRows, SideWords } from './garment-words';
import { PhotographedPicture } from './photographed-picture';
import { SIZES_TO_CHOOSE, SizeLine } from './size-line';

type Pictures = {
  /** Where its pictures are: `/proof/TOKEN/picture/2`. */
  readonly address: string;
  /** All of them have this size in px: they are at one scale. */
  readonly widthPx: number;
  readonly heightPx: number;
};

type GarmentSectionProps = { words: GarmentWords; pictures: Pictures };

/**
 * One garment: all its sizes on the line, its sides large on the one that is chosen, and what the tape reads on every
 * size. The size is chosen by style alone, without scripts: see the style sheet.
 */
export function GarmentSection({ words, pictures }: GarmentSectionProps) {
  return (
    <section className={styles.garment}>
      <h2>{words.title}</h2>
      <p className={styles.total}>{words.inAll}</p>
      <SizeLine words={words} address={pictures.address} />
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
      {side.pictures.map(({ size, sceneSha256, alt, photograph }) =>
        photograph && words.photographs ? (
          <div key={size} data-sizes={size} className={ofSize(size)}>
            <PhotographedPicture
              picture={{ size, sceneSha256, alt, photograph }}
              words={words.photographs}
              name={`${words.garmentId}-${side.side}`}
              {...{ address, widthPx, heightPx }}
            />
          </div>
        ) : (
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
        ),
      )}
      <figcaption>
        {side.prints.map((print) => (
          <PrintWords key={print.printId} print={print} />
        ))}
        {side.prints.length === 0 ? <p>{words.nothingHere}</p> : null}
      </figcaption>
    </figure>
  );
}

/** What the tape says of one print, why it is meant so where that has to be said, and how near the seams it lies. */
function PrintWords({ print: { title, rows, meant, soft, seams } }: { print: PrintRows }) {
  return (
    <div className={styles.print}>
      <table className={styles.readings}>
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
      {soft ? <p className={styles.meant}>{soft}</p> : null}
      {meant ? (
        <div className={styles.meant}>
          {meant.facts.map((fact) => (
            <p key={fact}>{fact}</p>
          ))}
          <p className={styles.says}>{meant.says}</p>
        </div>
      ) : null}
      {seams ? (
        <details className={styles.seams}>
          <summary>{seams.summary}</summary>
          <table>
            <caption className="visually-hidden">{`${seams.summary}: ${title}`}</caption>
            <tbody>
              {seams.rows.map(({ of, sizes, near }) => (
                <tr key={of} data-sizes={of}>
                  <th scope="row">{sizes}</th>
                  <td>{near}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      ) : null}
    </div>
  );
}
