import { memo, useMemo } from 'react';
import { useTranslations } from 'use-intl';
import type { Side } from '@/lib/domain/garment/flat';
import type { LayoutDocument, SizeKey } from '@/lib/domain/layout/document';
import { composeScene } from '@/lib/domain/layout/scene';
import { keyOf, type OfferedSize, sizeName } from '@/lib/domain/layout/sizes';
import type { SetType } from '@/lib/domain/layout/type-case';
import { sizeWords } from '@/lib/messages/reading-words';
import { SceneSvg } from '../flat/scene-svg';
import { classNames } from '../ui/class-names';
import type { HungPlace } from './hung-line';
import styles from './the-line.module.css';

type HungSizeProps = {
  layout: Pick<LayoutDocument, 'garments' | 'prints'>;
  garmentId: string;
  side: Side;
  /** Sets the words that are looked at. */
  setType: SetType | undefined;
  offered: OfferedSize;
  place: HungPlace;
  isChosen: boolean;
  /** Some print does not fit on it as it lies. */
  isTroubled: boolean;
  href: (sha256: string) => string;
  onChoose: (size: SizeKey) => void;
};

/** One size on the line: pegged up, tagged with its label and count, and a button that shows it on the table. */
export const HungSize = memo(function HungSize({
  layout,
  garmentId,
  side,
  setType,
  offered,
  place,
  isChosen,
  isTroubled,
  href,
  onChoose,
}: HungSizeProps) {
  const t = useTranslations('table.line');
  const readings = useTranslations('readings');
  const { garments, prints } = layout;
  const { blankId, sizeId } = keyOf(offered);
  const scene = useMemo(
    () => composeScene({ garments, prints }, { garmentId, size: { blankId, sizeId }, side, lineId: null }, setType),
    [garments, prints, garmentId, blankId, sizeId, side, setType],
  );
  const size = sizeWords(readings, sizeName(offered));
  const { quantity } = offered;
  const name = quantity > 0 ? t('chooseWithCount', { size, count: quantity }) : t('choose', { size });
  const { x, y, width, height } = place.box;
  const [left, middle, right] = place.line;
  return (
    <li className={styles.place}>
      <svg className={styles.string} viewBox={`0 ${y} 100 ${height}`} preserveAspectRatio="none" aria-hidden="true">
        <path d={`M0 ${left}Q50 ${2 * middle - (left + right) / 2} 100 ${right}`} vectorEffect="non-scaling-stroke" />
      </svg>
      <button
        type="button"
        className={styles.size}
        aria-pressed={isChosen}
        aria-label={isTroubled ? t('troubled', { name }) : name}
        onClick={() => onChoose({ blankId, sizeId })}
      >
        <svg className={styles.hung} viewBox={`${x} ${y} ${width} ${height}`} aria-hidden="true">
          <g transform={`translate(${x} ${y})`}>
            <SceneSvg scene={scene} box={place.box} href={href} title={size} />
          </g>
          {place.pegs.map((peg) => (
            <g key={peg.x} className={styles.peg}>
              <rect x={peg.x - 11} y={peg.y - 44} width={22} height={78} />
              <path d={`M${peg.x} ${peg.y - 44}v78`} />
            </g>
          ))}
        </svg>
        <span className={classNames(styles.tag, isChosen && styles.chosen)}>
          {isTroubled ? <span className={styles.troubled}>△</span> : null}
          <b>{size}</b>
          {quantity > 0 ? <span className={styles.count}>{t('count', { count: quantity })}</span> : null}
        </span>
      </button>
    </li>
  );
});
