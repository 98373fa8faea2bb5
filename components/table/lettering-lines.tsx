import { useDeferredValue, useMemo } from 'react';
import { useTranslations } from 'use-intl';
import { type LetteringFinding, letteringFindings, stopsLettering } from '@/lib/domain/layout/lettering-findings';
import { letteringOf } from '@/lib/domain/layout/print-content';
import { formatLength } from '@/lib/domain/measure/format-length';
import { UM_PER_MM } from '@/lib/domain/measure/length';
import { personName } from '@/lib/domain/people/person-name';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import type { TableEditor } from '@/lib/editor/table-editor';
import { classNames } from '../ui/class-names';
import styles from './fit-lines.module.css';
import { fontName } from './font-select';

type LetteringLinesProps = { chosen: ChosenPrint; editor: TableEditor };

/** What becomes of everybody's words at this letter height; nothing for a picture. */
export function LetteringLines({ chosen, editor }: LetteringLinesProps) {
  const { type } = editor;
  const { people } = editor.history.present;
  // Looked through when there is time: a print being dragged must not wait for a whole list.
  const print = useDeferredValue(chosen.print);
  const group = useDeferredValue(chosen.group);
  const found = useMemo(
    () =>
      type && letteringOf(print) && group.capHeightUm !== undefined
        ? letteringFindings(print, group, people, type)
        : null,
    [print, group, people, type],
  );
  const words = useWords(chosen, editor);
  if (!found) return null;
  const tight = found.filter(({ code }) => code !== 'tooThin' && code !== 'outlineTooThin' && code !== 'borrowed');
  return (
    <div className={styles.fit}>
      {tight.length === 0 ? (
        <p className={styles.clear}>
          <span aria-hidden="true">✓ </span>
          {words.fits()}
        </p>
      ) : null}
      {found.map((finding) => (
        <p key={finding.code} className={styles.trouble}>
          <b className={classNames(stopsLettering(finding) && styles.stops)}>
            <span aria-hidden="true">{stopsLettering(finding) ? '■' : '△'} </span>
          </b>
          {words.of(finding)}
        </p>
      ))}
    </div>
  );
}

function useWords({ print, group }: ChosenPrint, editor: TableEditor) {
  const t = useTranslations('lettering');
  const { unit, type } = editor;
  const { people } = editor.history.present;
  const lettering = letteringOf(print);
  const height = formatLength(group.capHeightUm ?? 0, unit);
  const mm = (um: number) => String(Math.round(um / 10) / (UM_PER_MM / 10));

  function whose(ids: readonly (string | null)[]): string | null {
    const [first] = ids;
    const index = people.lines.findIndex(({ personId }) => personId === first);
    const person = people.lines[index];
    if (!person) return null;
    const name = personName(people, person) ?? t('nameless', { line: index + 1 });
    return t('who', { first: name, more: ids.length - 1 });
  }

  return {
    fits: () => {
      const sample = lettering && type ? type.sample(lettering, group).words.join(' ') : '';
      return lettering && type?.isPersonal(lettering) && people.lines.length > 0
        ? t('fits', { height })
        : t('fitsSample', { words: sample, height });
    },
    of: (finding: LetteringFinding): string => {
      switch (finding.code) {
        case 'missing': {
          const who = whose(finding.personIds);
          const said = { characters: finding.characters.join(' '), count: finding.characters.length };
          return who ? t('found.missing', { who, ...said }) : t('found.missingFixed', said);
        }
        case 'lowered': {
          const who = whose(finding.people.map(({ personId }) => personId));
          const said = { height, lowest: formatLength(finding.people[0]?.capHeightUm ?? 0, unit) };
          return who ? t('found.lowered', { who, ...said }) : t('found.loweredFixed', said);
        }
        case 'squeezed': {
          const who = whose(finding.people.map(({ personId }) => personId));
          const percent = finding.people[0]?.percent ?? 100;
          return who ? t('found.squeezed', { who, percent }) : t('found.squeezedFixed', { percent });
        }
        case 'borrowed':
          return t('found.borrowed', {
            font: lettering ? fontName(lettering.font) : '',
            characters: finding.borrowed.map(({ text }) => text).join(' '),
            other: [...new Set(finding.borrowed.map(({ font }) => fontName(font)))].join(', '),
          });
        case 'tooThin':
          return t('found.tooThin', {
            mm: mm(finding.um),
            needed: mm(finding.neededUm),
            height: formatLength(finding.passesAtUm, unit),
          });
        case 'outlineTooThin':
          return t('found.outlineTooThin', { mm: mm(finding.um), needed: mm(finding.neededUm) });
        case 'nothingToSay':
          return t('found.nothingToSay');
      }
    },
  };
}
