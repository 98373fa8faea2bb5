import styles from './qr-picture.module.css';

type QrPictureProps = {
  code: { readonly size: number; readonly d: string };
  words: string;
};

/** A QR code with what it is for. */
export function QrPicture({ code, words }: QrPictureProps) {
  return (
    <figure className={styles.figure}>
      <svg viewBox={`0 0 ${code.size} ${code.size}`} role="img" aria-label={words} className={styles.code}>
        <rect width={code.size} height={code.size} fill="#FFFFFF" />
        <path d={code.d} fill="#000000" shapeRendering="crispEdges" />
      </svg>
      <figcaption className={styles.words}>{words}</figcaption>
    </figure>
  );
}
