import { Card } from '../ui/card';
import { LinkButton } from '../ui/link-button';
import { SubmitButton } from '../ui/submit-button';
import styles from './photograph-list.module.css';

/** One photograph of a blank in words. */
export type ListedPhotograph = {
  readonly photographId: string;
  readonly src: string;
  readonly alt: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** What it is of. */
  readonly title: string;
  /** Whether it is set to scale, and by what. */
  readonly standing: string;
  readonly isSet: boolean;
  readonly href: string;
  readonly setWords: string;
  readonly remove: () => Promise<void>;
};

type PhotographListProps = {
  photographs: readonly ListedPhotograph[];
  words: { readonly remove: string; readonly removing: string };
};

/** The photographs of a blank, each with the way to its points. */
export function PhotographList({ photographs, words }: PhotographListProps) {
  return (
    <ul className={styles.list}>
      {photographs.map((photograph) => (
        <Card as="li" key={photograph.photographId}>
          <div className={styles.photograph}>
            {/* biome-ignore lint/performance/noImgElement: it is served small already, to whoever is signed in. */}
            <img
              src={photograph.src}
              alt={photograph.alt}
              width={photograph.widthPx}
              height={photograph.heightPx}
              loading="lazy"
            />
            <h3>{photograph.title}</h3>
            <p className={photograph.isSet ? styles.isSet : styles.notSet}>
              <span aria-hidden="true">{photograph.isSet ? '✓ ' : '△ '}</span>
              {photograph.standing}
            </p>
            <div className={styles.actions}>
              <LinkButton kind={photograph.isSet ? 'secondary' : 'primary'} href={photograph.href}>
                {photograph.setWords}
              </LinkButton>
              <form action={photograph.remove}>
                <SubmitButton kind="quiet" waiting={words.removing}>
                  {words.remove}
                  <span className="visually-hidden">: {photograph.title}</span>
                </SubmitButton>
              </form>
            </div>
          </div>
        </Card>
      ))}
    </ul>
  );
}
