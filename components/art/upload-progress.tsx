import { Button } from '../ui/button';
import styles from './upload-progress.module.css';

type UploadProgressProps = {
  /** How much of it was sent, 0 to 1; sent whole, it is being looked at, and nobody knows for how long. */
  share: number;
  sending: (percent: number) => string;
  reading: string;
  stop: string;
  onStop: () => void;
};

/** How far a picture is on its way in, and a way to stop it. */
export function UploadProgress({ share, sending, reading, stop, onStop }: UploadProgressProps) {
  const words = share < 1 ? sending(Math.round(share * 100)) : reading;
  return (
    <div className={styles.progress}>
      <p>{words}</p>
      <progress aria-label={words} value={share < 1 ? share : undefined} />
      <Button onClick={onStop}>{stop}</Button>
    </div>
  );
}
