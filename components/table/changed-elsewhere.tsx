import { useEffect, useId, useMemo, useRef } from 'react';
import { useTranslations } from 'use-intl';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { commonBox, composeScene } from '@/lib/domain/layout/scene';
import type { SetType, TypeCase } from '@/lib/domain/layout/type-case';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { layoutDifferences, sideThatDiffers } from '@/lib/editor/layout-differences';
import { type Selection, settledSelection } from '@/lib/editor/selection';
import { SceneSvg } from '../flat/scene-svg';
import { Button } from '../ui/button';
import styles from './changed-elsewhere.module.css';
import { useDifferenceWords } from './difference-words';

type ChangedElsewhereProps = {
  mine: LayoutDocument;
  theirs: LayoutDocument;
  selection: Selection | null;
  unit: LengthUnit;
  href: (sha256: string) => string;
  /** What the lettering of both is set from. */
  type: TypeCase | null;
  onTheirs: () => void;
  onMine: () => void;
};

/** As many differences as are said one by one. */
const MOST_SAID = 8;
/** Room around the garments, mm (by eye). */
const MARGIN_MM = 12;

/**
 * Somebody else saved this layout first: both copies are shown, with what differs, and which of the two goes on is the
 * maker's choice. Nothing is lost meanwhile.
 */
export function ChangedElsewhere(props: ChangedElsewhereProps) {
  const { mine, theirs, selection, unit, href, type, onTheirs, onMine } = props;
  const t = useTranslations('table.conflict');
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  const differences = useMemo(() => layoutDifferences(mine, theirs), [mine, theirs]);
  const words = useDifferenceWords(mine, unit);
  const said = [...new Set(differences.map(words))];
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const side = selection && sideThatDiffers(differences, selection);
  const pictures =
    selection && side ? picturesOf(mine, theirs, { ...selection, ...side, printId: null }, type?.sample) : null;
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-text`}
      // Leaving without choosing would leave two copies and no saving.
      onCancel={(event) => event.preventDefault()}
    >
      <h2 id={`${id}-title`}>{t('title')}</h2>
      <p id={`${id}-text`}>{t('text')}</p>
      <div className={styles.both}>
        <section className={styles.one}>
          <h3>{t('mineTitle')}</h3>
          {pictures ? <SceneSvg scene={pictures.mine} box={pictures.box} href={href} title={t('mineTitle')} /> : null}
          <Button onClick={onMine}>{t('mine')}</Button>
        </section>
        <section className={styles.one}>
          <h3>{t('theirsTitle')}</h3>
          {pictures?.theirs ? (
            <SceneSvg scene={pictures.theirs} box={pictures.box} href={href} title={t('theirsTitle')} />
          ) : (
            <p className={styles.gone}>{t('gone')}</p>
          )}
          <Button kind="primary" onClick={onTheirs}>
            {t('theirs')}
          </Button>
        </section>
      </div>
      {said.length > 0 ? (
        <>
          <h3 id={`${id}-differs`}>{t('differsTitle')}</h3>
          <ul className={styles.differences} aria-labelledby={`${id}-differs`}>
            {said.slice(0, MOST_SAID).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
            {said.length > MOST_SAID ? <li>{t('more', { count: said.length - MOST_SAID })}</li> : null}
          </ul>
        </>
      ) : null}
      <p className={styles.small}>{t('mineText')}</p>
    </dialog>
  );
}

/** The same side of the same garment in both copies, at one scale; theirs is null where they have no such garment. */
function picturesOf(mine: LayoutDocument, theirs: LayoutDocument, wanted: Selection, setType?: SetType) {
  const { garmentId } = wanted;
  const here = settledSelection(mine, wanted);
  if (!here) return null;
  const there = theirs.garments.some((garment) => garment.garmentId === garmentId)
    ? settledSelection(theirs, { ...here, printId: null })
    : null;
  const scene = composeScene(mine, { ...here, lineId: null }, setType);
  const other = there && composeScene(theirs, { ...there, lineId: null }, setType);
  return { mine: scene, theirs: other, box: commonBox(other ? [scene, other] : [scene], MARGIN_MM) };
}
