import { useTranslations } from 'use-intl';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { startingInk } from '@/lib/domain/layout/starting-groups';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { setAcross, setDrop } from '@/lib/editor/commands/place-print';
import { setHeight, setLetterHeight, setWidth } from '@/lib/editor/commands/size-print';
import {
  FURTHEST_READING_UM,
  LARGEST_PRINT_UM,
  LEAST_LETTERS_UM,
  MOST_LETTERS_UM,
  SMALLEST_PRINT_UM,
} from '@/lib/editor/print-limits';
import { afterCommand, type TableEditor } from '@/lib/editor/table-editor';
import { presentReading, type ReadingName, type TypedRefusal, typedReading } from '@/lib/editor/typed-reading';
import { type Applied, useTypedText } from './use-typed-text';

export type Change = (step: (editor: TableEditor) => TableEditor) => void;

/** What a hint shows how to write, in each unit. */
const EXAMPLE: Record<LengthUnit, string> = { in: '3 1/2', cm: '9' };

/**
 * One reading of the print in hand as a field: shows it with its unit, follows it live, sets what is typed. `way` is the
 * side a distance across is meant for while the print still lies on the centre line; `measuredUm` what it comes to where
 * that is less than what was asked for: letters that had to be set lower.
 */
export function useReading(
  name: ReadingName,
  { print, group }: Pick<ChosenPrint, 'print' | 'group'>,
  unit: LengthUnit,
  change: Change,
  way: 1 | -1 = 1,
  measuredUm?: Micrometres,
) {
  const t = useTranslations('table.refused');
  const present = presentReading(name, startingInk(print.content), group, LOCATIONS[print.locationId].direction);
  const shownUm = measuredUm ?? present.sign * present.um + 0;

  function apply(written: string): Applied {
    const typed = typedReading(written, unit, present);
    if (!typed.ok) {
      const sentence = t(typed.reason, {
        example: EXAMPLE[unit],
        least: formatLength(typed.reason === 'lettersTooSmall' ? LEAST_LETTERS_UM : SMALLEST_PRINT_UM, unit),
        most: formatLength(mostUm(typed.reason), unit),
      });
      return { ok: false, sentence };
    }
    const um = name === 'across' && present.um === 0 ? way * typed.um : typed.um;
    change((editor) => afterReading(editor, name, um));
    return { ok: true };
  }

  return useTypedText(formatLength(shownUm, unit), apply);
}

function mostUm(reason: TypedRefusal): number {
  if (reason === 'lettersTooLarge') return MOST_LETTERS_UM;
  return reason === 'tooFar' ? FURTHEST_READING_UM : LARGEST_PRINT_UM;
}

function afterReading(editor: TableEditor, name: ReadingName, um: number): TableEditor {
  switch (name) {
    case 'width':
      return afterCommand(editor, setWidth, { widthUm: um });
    case 'height':
      return afterCommand(editor, setHeight, { heightUm: um });
    case 'drop':
      return afterCommand(editor, setDrop, { dropUm: um });
    case 'across':
      return afterCommand(editor, setAcross, { acrossUm: um });
    case 'letters':
      return afterCommand(editor, setLetterHeight, { capHeightUm: um });
  }
}
