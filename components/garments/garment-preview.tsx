'use client';

import { useMemo } from 'react';
import { useTranslations } from 'use-intl';
import { widthMeasureOf } from '@/lib/domain/garment/kinds';
import { blankFromStyle } from '@/lib/domain/layout/blank-from-style';
import type { Cloth } from '@/lib/domain/layout/document';
import { composeScene, type PathShape, type Scene } from '@/lib/domain/layout/scene';
import { type LengthUnit, type Micrometres, mmFromUm, UM_PER_CM, UM_PER_INCH } from '@/lib/domain/measure/length';
import { chestWords, sizeWords } from '@/lib/messages/reading-words';
import { SceneSvg } from '../flat/scene-svg';
import styles from './garment-preview.module.css';
import { isGeneric, type OfferedStyle } from './offered-style';

type GarmentPreviewProps = { style: OfferedStyle; cloth: Cloth; unit: LengthUnit };

const MARGIN_MM = 20;
const TAPE_MM = 20;
const TAPE_HEX = '#F5C73A';
const TAPE_INK_HEX = '#1B1A15';

/** What would be added: the front in the middle size, with a tape as long as the garment is wide. */
export function GarmentPreview({ style, cloth, unit }: GarmentPreviewProps) {
  const t = useTranslations('garments.preview');
  const readings = useTranslations('readings');
  const { kind, ageBand, middle } = style;
  const drawn = useMemo(() => drawnFront(style), [style]);
  if (!middle) return <p className={styles.none}>{t('noSizes')}</p>;
  if (!drawn) return <p className={styles.none}>{t('impossible')}</p>;
  const size = sizeWords(readings, { ageBand, label: middle.label });
  const widthMeasure = widthMeasureOf(kind);
  const scene = drawn.sceneIn(cloth);
  const { box } = scene;
  return (
    <figure className={styles.preview}>
      <SceneSvg
        scene={{ shapes: [...scene.shapes, ...widthTape(scene, drawn.widthUm, unit)] }}
        box={{
          x: box.x - MARGIN_MM,
          y: box.y - MARGIN_MM,
          width: box.width + 2 * MARGIN_MM,
          height: box.height + 3 * MARGIN_MM + TAPE_MM,
        }}
        href={(sha256) => sha256}
        title={t('front', { name: style.name, size })}
        className={styles.front}
      />
      <figcaption className={styles.words}>
        <span>{t('middle', { size, width: chestWords(readings, drawn.widthUm, unit, widthMeasure) })}</span>
        {isGeneric(style) ? <span className={styles.generic}>{t('generic')}</span> : null}
      </figcaption>
    </figure>
  );
}

type Drawn = { widthUm: Micrometres; sceneIn: (cloth: Cloth) => Scene };

/** Null where the size cannot be drawn. */
function drawnFront({ name, kind, ageBand, fabric, middle }: OfferedStyle): Drawn | null {
  if (!middle) return null;
  const cut = { acrossUm: 0, longUm: 0 };
  const made = blankFromStyle(
    { name, kind, ageBand, fabric, cutToleranceUm: cut, sizes: [middle] },
    { blankId: 'shown' },
  );
  const widthUm = made.ok && made.blank.sizes[0]?.measuresUm[widthMeasureOf(kind)];
  if (!made.ok || !widthUm) return null;
  const key = { garmentId: 'shown', size: { blankId: 'shown', sizeId: middle.sizeId }, side: 'front', lineId: null };
  return {
    widthUm,
    sceneIn: (cloth) =>
      composeScene(
        { garments: [{ garmentId: 'shown', name, cloth, blanks: [made.blank], counts: [] }], prints: [] },
        { ...key, side: 'front' },
      ),
  };
}

/** A tape under the garment, as long as it is wide, with a mark at every inch or every two centimetres. */
function widthTape({ box }: Pick<Scene, 'box'>, widthUm: Micrometres, unit: LengthUnit): PathShape[] {
  const half = mmFromUm(widthUm) / 2;
  const top = box.y + box.height + MARGIN_MM;
  const stepMm = mmFromUm(unit === 'in' ? UM_PER_INCH : 2 * UM_PER_CM);
  const marks = Array.from({ length: Math.floor((2 * half) / stepMm) }, (_, index) => -half + (index + 1) * stepMm);
  return [
    {
      kind: 'path',
      layer: 'tape',
      d: `M${-half} ${top}H${half}V${top + TAPE_MM}H${-half}Z`,
      fill: TAPE_HEX,
      stroke: { hex: TAPE_INK_HEX, widthMm: 1 },
    },
    {
      kind: 'path',
      layer: 'tape',
      d: marks.map((x) => `M${x} ${top}v${TAPE_MM / 2}`).join(''),
      stroke: { hex: TAPE_INK_HEX, widthMm: 1.2 },
    },
  ];
}
