import { useId } from 'react';
import { useTranslations } from 'use-intl';
import { personName } from '@/lib/domain/people/person-name';
import { type TableEditor, withPersonLookedAt } from '@/lib/editor/table-editor';
import slips from './slips.module.css';
import type { Change } from './use-reading';

/** Whose words the lettering on the paper and on the line shows; nothing while nobody is on the list. */
export function PersonSelect({ editor, change }: { editor: TableEditor; change: Change }) {
  const id = useId();
  const t = useTranslations('lettering');
  const { people } = editor.history.present;
  if (people.lines.length === 0) return null;
  return (
    <div className={slips.field}>
      <label htmlFor={id}>{t('looked')}</label>
      <select
        id={id}
        value={editor.personId ?? ''}
        onChange={({ currentTarget: { value } }) =>
          change((before) => withPersonLookedAt(before, value === '' ? null : value))
        }
      >
        <option value="">{t('samples')}</option>
        {people.lines.map((person, index) => (
          <option key={person.personId} value={person.personId}>
            {personName(people, person) ?? t('nameless', { line: index + 1 })}
          </option>
        ))}
      </select>
    </div>
  );
}
