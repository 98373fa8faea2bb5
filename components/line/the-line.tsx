'use client';

import { memo, useDeferredValue, useEffect, useMemo, useRef } from 'react';
import { useTranslations } from 'use-intl';
import type { Side } from '@/lib/domain/garment/flat';
import type { LayoutDocument, SizeKey } from '@/lib/domain/layout/document';
import { troubledSizes } from '@/lib/domain/layout/layout-fit';
import { flatOf } from '@/lib/domain/layout/scene';
import { garmentOf, keyOf, sameSize, sizesToShow } from '@/lib/domain/layout/sizes';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import { hungLine } from './hung-line';
import { HungSize } from './hung-size';
import styles from './the-line.module.css';

type TheLineProps = {
  layout: Pick<LayoutDocument, 'garments' | 'prints'>;
  garmentId: string;
  side: Side;
  /** What lettering is set from, and whose words are looked at. */
  type: TypeCase | null;
  personId: string | null;
  chosen: SizeKey;
  href: (sha256: string) => string;
  onChoose: (size: SizeKey) => void;
};

/** The line: every ordered size of a garment hung side by side at one scale with its prints; each chooses the size shown. */
export const TheLine = memo(function TheLine(props: TheLineProps) {
  const { layout, garmentId, side, type, personId, chosen, href, onChoose } = props;
  const t = useTranslations('table.line');
  const garment = garmentOf(layout, garmentId);
  const shown = useMemo(() => {
    const sizes = sizesToShow(garment);
    return { sizes, hung: hungLine(sizes.map(({ blank, size }) => flatOf(blank.kind, size, side))) };
  }, [garment, side]);
  // Worked out when there is time: a print being dragged must not wait for it.
  const settled = useDeferredValue(layout);
  const troubled = useMemo(
    () => troubledSizes(settled, garmentId, side, type?.longest),
    [settled, garmentId, side, type],
  );
  const list = useRef<HTMLUListElement>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is chosen decides which place is scrolled to
  useEffect(() => {
    const row = list.current;
    const place = row?.querySelector('[aria-pressed="true"]')?.parentElement;
    if (!(row && place)) return;
    row.scrollLeft = place.offsetLeft - (row.clientWidth - place.clientWidth) / 2;
  }, [chosen]);

  return (
    <nav className={styles.line} aria-label={t('title')}>
      <ul ref={list} className={styles.row}>
        {shown.sizes.map((offered, index) => {
          const place = shown.hung[index];
          const key = keyOf(offered);
          if (!place) return null;
          return (
            <HungSize
              key={`${key.blankId}/${key.sizeId}`}
              layout={layout}
              garmentId={garmentId}
              side={side}
              setType={type?.of(personId)}
              offered={offered}
              place={place}
              isChosen={sameSize(key, chosen)}
              isTroubled={troubled.some((size) => sameSize(size, key))}
              href={href}
              onChoose={onChoose}
            />
          );
        })}
      </ul>
    </nav>
  );
});
