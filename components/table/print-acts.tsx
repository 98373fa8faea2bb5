import { useTranslations } from 'use-intl';
import { type TableCommandId, tableCommand } from '@/lib/editor/table-commands';
import type { TableEditor } from '@/lib/editor/table-editor';
import { isHidden, isPinned } from '@/lib/editor/working-aids';
import { classNames } from '../ui/class-names';
import { ActIcon, type ActIconName } from './act-icon';
import styles from './print-acts.module.css';
import type { Perform } from './use-table-commands';

type PrintActsProps = { editor: TableEditor; printId: string; perform: Perform };

/** What can be done with the print in hand besides its readings, each a square with its own label. */
export function PrintActs({ editor, printId, perform }: PrintActsProps) {
  const t = useTranslations('table.act');
  const pinned = isPinned(editor, printId);
  const hidden = isHidden(editor, printId);
  const act = { editor, perform };
  return (
    <div role="group" aria-label={t('title')} className={styles.acts}>
      <Act {...act} id="raise" icon="raise" label={t('raise')} />
      <Act {...act} id="lower" icon="lower" label={t('lower')} />
      <Act {...act} id="duplicate" icon="duplicate" label={t('duplicate')} />
      <Act {...act} id="mirror" icon="mirror" label={t('mirror')} />
      <Act {...act} id="pin" icon="pin" label={t('pin')} isOn={pinned} />
      <Act {...act} id="hide" icon={hidden ? 'show' : 'hide'} label={t('hide')} isOn={hidden} />
      <Act {...act} id="remove" icon="remove" label={t('remove')} />
    </div>
  );
}

type ActProps = Omit<PrintActsProps, 'printId'> & {
  id: TableCommandId;
  icon: ActIconName;
  label: string;
  /** Given for what is switched on and off. */
  isOn?: boolean;
};

/** A button that cannot run now stays where it is and says why when it is pressed. */
function Act({ editor, perform, id, icon, label, isOn }: ActProps) {
  const cannot = useTranslations('table.cannot');
  const command = tableCommand(id);
  const refusal = command.refusal(editor);
  return (
    <button
      type="button"
      className={classNames(styles.act, isOn && styles.on)}
      aria-label={label}
      title={refusal ? `${label}: ${cannot(refusal)}` : label}
      aria-pressed={isOn}
      aria-disabled={refusal !== null || undefined}
      onClick={() => perform(command)}
    >
      <ActIcon name={icon} />
    </button>
  );
}
