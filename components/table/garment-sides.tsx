import { useTranslations } from 'use-intl';
import type { Side } from '@/lib/domain/garment/flat';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { selectGarment, selectSide } from '@/lib/editor/selection';
import { shownFlat } from '@/lib/editor/shown-flat';
import { type TableEditor, withSelection } from '@/lib/editor/table-editor';
import { colourWords } from '@/lib/messages/cloth-words';
import { classNames } from '../ui/class-names';
import styles from './paper.module.css';
import type { Change } from './use-reading';

/** Beside the garment: which one lies on the table, and which side of it is up. */
export function GarmentSides({ editor, change }: { editor: TableEditor; change: Change }) {
  const t = useTranslations('table.paper');
  const readings = useTranslations('readings');
  const { selection, history } = editor;
  const shown = shownFlat({ layout: history.present, selection });
  if (!(selection && shown)) return null;
  const sides = sidesOf(shown.offered.blank.kind);
  return (
    <>
      {history.present.garments.length > 1 ? (
        <label className={styles.garment}>
          <span className="visually-hidden">{t('garments')}</span>
          <select
            value={selection.garmentId}
            onChange={({ currentTarget: { value } }) =>
              change((before) => withSelection(before, (layout, chosen) => selectGarment(layout, chosen, value)))
            }
          >
            {history.present.garments.map(({ garmentId, name, cloth }) => (
              <option key={garmentId} value={garmentId}>
                {name}, {colourWords(readings, cloth)}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      <fieldset className={styles.sides}>
        <legend className="visually-hidden">{t('sides')}</legend>
        {sides.map((side) => {
          const isUp = side === selection.side;
          const isOther = !isUp && isFace(side) && isFace(selection.side);
          return (
            <button
              key={side}
              type="button"
              aria-pressed={isUp}
              className={classNames(styles.side, isUp && styles.up)}
              onClick={() =>
                change((before) => withSelection(before, (layout, chosen) => selectSide(layout, chosen, side)))
              }
            >
              {isOther ? t('turnOver') : readings(`side.${side}`)}
            </button>
          );
        })}
      </fieldset>
    </>
  );
}

/** A garment is turned over from one of its faces to the other; from a sleeve both are named. */
function isFace(side: Side): boolean {
  return side === 'front' || side === 'back';
}
