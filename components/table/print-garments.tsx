import { useTranslations } from 'use-intl';
import { v7 as newId } from 'uuid';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { garmentsSuiting, setGarments } from '@/lib/editor/commands/cover-garments';
import { afterCommand } from '@/lib/editor/table-editor';
import { colourWords } from '@/lib/messages/cloth-words';
import styles from './print-garments.module.css';
import type { Change } from './use-reading';

type PrintGarmentsProps = {
  chosen: ChosenPrint;
  garments: LayoutDocument['garments'];
  change: Change;
  locked: boolean;
};

/** Which garments of the job the print is on; shown where there is more than one. The last one cannot be left. */
export function PrintGarments({ chosen: { print }, garments, change, locked }: PrintGarmentsProps) {
  const t = useTranslations('table.slips');
  const readings = useTranslations('readings');
  if (garments.length < 2) return null;
  const suiting = garmentsSuiting({ garments }, print);

  function put(garmentId: string, isOn: boolean): void {
    const garmentIds = isOn ? [...print.garmentIds, garmentId] : print.garmentIds.filter((id) => id !== garmentId);
    change((editor) => afterCommand(editor, setGarments, { garmentIds, newId }));
  }

  return (
    <fieldset className={styles.garments}>
      <legend>{t('on')}</legend>
      {garments.map(({ garmentId, name, cloth }) => {
        const isOn = print.garmentIds.includes(garmentId);
        const isLast = isOn && print.garmentIds.length === 1;
        const suits = suiting.some((garment) => garment.garmentId === garmentId);
        return (
          <label key={garmentId} className={styles.garment}>
            <input
              type="checkbox"
              checked={isOn}
              disabled={locked || isLast || !suits}
              onChange={({ currentTarget: { checked } }) => put(garmentId, checked)}
            />
            <span>
              {name}, {colourWords(readings, cloth)}
              {suits ? null : <small>{t('doesNotSuit')}</small>}
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}
