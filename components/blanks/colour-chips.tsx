import type { StyleColour } from '@/lib/domain/garment/blank-style';
import styles from './colour-chips.module.css';

/** Chips shown one by one; of the rest only how many. */
const MOST_SHOWN = 14;

type ColourChipsProps = {
  colours: readonly Pick<StyleColour, 'colourId' | 'name' | 'hex' | 'secondHex'>[];
  none: string;
  more: (count: number) => string;
};

/** The colours a blank comes in, each as a small piece of cloth with its name behind it. */
export function ColourChips({ colours, none, more }: ColourChipsProps) {
  if (colours.length === 0) return <p className={styles.none}>{none}</p>;
  const rest = colours.length - MOST_SHOWN;
  return (
    <ul className={styles.chips}>
      {colours.slice(0, MOST_SHOWN).map(({ colourId, name, hex, secondHex }) => (
        <li key={colourId}>
          <svg viewBox="0 0 16 16" role="img" aria-label={name} className={styles.chip}>
            <title>{name}</title>
            <rect width="16" height="16" fill={hex} />
            {secondHex ? <path d="M16 0v16H0z" fill={secondHex} /> : null}
          </svg>
        </li>
      ))}
      {rest > 0 ? <li className={styles.none}>{more(rest)}</li> : null}
    </ul>
  );
}
