import styles from './line-pictures.module.css';

type LinePicturesProps = {
  /** Every size of a garment side by side, one picture a side. */
  pictures: readonly { src: string; alt: string }[];
  widthPx: number;
  heightPx: number;
  /** The sizes, in the order they hang. */
  caption: string;
};

/** The line as the customer sees it: every size at one scale, in a box of its own that scrolls. */
export function LinePictures({ pictures, widthPx, heightPx, caption }: LinePicturesProps) {
  return (
    <figure className={styles.line}>
      <section className={styles.scroller} aria-label={caption} tabIndex={0}>
        {pictures.map(({ src, alt }) => (
          // biome-ignore lint/performance/noImgElement: made once by our own server at the size it is shown
          <img key={src} src={src} alt={alt} width={widthPx} height={heightPx} loading="lazy" />
        ))}
      </section>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}
