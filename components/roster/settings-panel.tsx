import type { PeopleList } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import styles from './panels.module.css';
import type { PeopleWords } from './roster-words';

type SettingsPanelProps = { t: PeopleWords; list: PeopleList; onEdit: (edits: readonly ListEdit[]) => void };

/** How the list is checked: within what a number may stand once, and whether each line has to be confirmed. */
export function SettingsPanel({ t, list, onEdit }: SettingsPanelProps) {
  const { numberOnceWithin, confirmEach } = list.settings;
  return (
    <div className={styles.panel}>
      <label className={styles.setting}>
        <span>{t('settings.numberOnce')}</span>
        <select
          value={numberOnceWithin}
          onChange={({ target }) =>
            onEdit([
              {
                edit: 'settings',
                settings: { confirmEach, numberOnceWithin: target.value === 'group' ? 'group' : 'garment' },
              },
            ])
          }
        >
          <option value="garment">{t('settings.within.garment')}</option>
          <option value="group">{t('settings.within.group')}</option>
        </select>
      </label>
      <label className={styles.setting}>
        <input
          type="checkbox"
          className={styles.tick}
          checked={confirmEach}
          onChange={({ target }) =>
            onEdit([{ edit: 'settings', settings: { numberOnceWithin, confirmEach: target.checked } }])
          }
        />
        <span>{t('settings.confirmEach')}</span>
      </label>
    </div>
  );
}
