import { useId, useState } from 'react';
import { useTranslations } from 'use-intl';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { directionsAcross } from '@/lib/domain/layout/readings';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { renamePrint, setTurn } from '@/lib/editor/commands/change-print';
import { setAcross } from '@/lib/editor/commands/place-print';
import { printName } from '@/lib/editor/print-name';
import { afterCommand } from '@/lib/editor/table-editor';
import { turnValue, typedTurn } from '@/lib/editor/typed-reading';
import { ReadingField } from './reading-field';
import styles from './slips.module.css';
import { type Change, useReading } from './use-reading';
import { useTypedText } from './use-typed-text';

type FieldsProps = { chosen: ChosenPrint; unit: LengthUnit; change: Change; locked: boolean };

/** The readings of the print in hand, each to be typed. */
export function ReadingFields({ chosen, unit, change, locked }: FieldsProps) {
  const t = useTranslations('table.reading');
  const [way, setWay] = useState<1 | -1>(1);
  const { acrossUm } = chosen.group;
  const isLettering = chosen.print.content.kind === 'lettering';
  const isLeft = (acrossUm === 0 ? way : acrossUm) > 0;
  const [positive, negative] = directionsAcross(LOCATIONS[chosen.print.locationId]);
  const wayId = useId();

  function turnAcross(next: 1 | -1): void {
    setWay(next);
    change((editor) => afterCommand(editor, setAcross, { acrossUm: next * Math.abs(acrossUm) + 0 }));
  }

  return (
    <div className={styles.fields}>
      <ReadingField
        label={t(isLettering ? 'letters' : 'width')}
        typed={useReading(isLettering ? 'letters' : 'width', chosen, unit, change)}
        locked={locked}
      />
      <ReadingField
        label={t(isLettering ? 'mostAcross' : 'height')}
        typed={useReading(isLettering ? 'width' : 'height', chosen, unit, change)}
        locked={locked}
      />
      <ReadingField label={t('drop')} typed={useReading('drop', chosen, unit, change)} locked={locked} />
      <ReadingField label={t('turn')} typed={useTurn(chosen, change)} locked={locked} />
      <ReadingField label={t('across')} typed={useReading('across', chosen, unit, change, way)} locked={locked} />
      <div className={styles.field}>
        <label htmlFor={wayId}>{t('side')}</label>
        <select
          id={wayId}
          value={isLeft ? 'left' : 'right'}
          disabled={locked}
          onChange={({ currentTarget: { value } }) => turnAcross(value === 'left' ? 1 : -1)}
        >
          <option value="left">{t(positive)}</option>
          <option value="right">{t(negative)}</option>
        </select>
      </div>
    </div>
  );
}

/** The name of the print in hand. */
export function NameField({ chosen, change, locked }: Omit<FieldsProps, 'unit'>) {
  const t = useTranslations('table');
  const typed = useTypedText(chosen.print.name, (name) => {
    if (printName(name) === null) return { ok: false, sentence: t('refused.noName') };
    change((editor) => afterCommand(editor, renamePrint, { name }));
    return { ok: true };
  });
  return <ReadingField label={t('slips.name')} typed={typed} locked={locked} isTitle />;
}

function useTurn({ print }: ChosenPrint, change: Change) {
  const t = useTranslations('table');
  return useTypedText(t('reading.degrees', { degrees: turnValue(print.turnCentideg) }), (written) => {
    const typed = typedTurn(written, print.turnCentideg);
    if (!typed.ok) return { ok: false, sentence: t(`refused.${typed.reason}`) };
    change((editor) => afterCommand(editor, setTurn, { turnCentideg: typed.turnCentideg }));
    return { ok: true };
  });
}
