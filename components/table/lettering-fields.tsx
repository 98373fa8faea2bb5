import { useId, useState } from 'react';
import { useTranslations } from 'use-intl';
import { letteringOf } from '@/lib/domain/layout/print-content';
import { type Lettering, LONGEST_LETTERING_LINE, MOST_LETTERING_LINES } from '@/lib/domain/lettering/lettering';
import { UM_PER_MM } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { changeLettering } from '@/lib/editor/commands/lettering-print';
import { columnsOffered } from '@/lib/editor/new-lettering';
import { afterCommand, type TableEditor } from '@/lib/editor/table-editor';
import { typedMillimetres, typedPercent } from '@/lib/editor/typed-lettering';
import { writtenLines } from '@/lib/editor/written-lines';
import { FontSelect, fontName } from './font-select';
import styles from './lettering.module.css';
import { useLetteringTools } from './lettering-tools';
import { ReadingField } from './reading-field';
import slips from './slips.module.css';
import type { Change } from './use-reading';
import { useTypedText } from './use-typed-text';
import { WordsField } from './words-field';

type LetteringFieldsProps = { chosen: ChosenPrint; editor: TableEditor; change: Change; locked: boolean };

/** Changes something of the lettering in hand; `continues`: it goes on with the change before, to be undone with it. */
type Set = (change: Partial<Lettering>, continues?: boolean) => void;

/** What the lettering in hand says and how it is set; nothing for a picture. */
export function LetteringFields({ chosen, editor, change, locked }: LetteringFieldsProps) {
  const t = useTranslations('lettering');
  const { fonts, withFont, failedFont, openingFont } = useLetteringTools();
  const lettering = letteringOf(chosen.print);
  if (!lettering) return null;
  const set: Set = (next, continues = false) =>
    change((before) => afterCommand(before, changeLettering, { change: next }, continues));
  const { printId } = chosen.print;
  const fields = { lettering, set, locked };
  return (
    <div className={styles.lettering}>
      <Words key={`words ${printId}`} {...fields} editor={editor} />
      <FontSelect
        value={lettering.font}
        fonts={fonts}
        locked={locked}
        onChoose={(font) => withFont(font, (before) => afterCommand(before, changeLettering, { change: { font } }))}
      />
      <p role="status" className={styles.status}>
        {openingFont ? t('openingFont', { font: fontName(openingFont) }) : ''}
      </p>
      {failedFont ? (
        <p role="alert" className={slips.wrong}>
          {t('missingFont', { font: fontName(failedFont) })}
        </p>
      ) : null}
      <div className={slips.fields}>
        <Colour label={t('colour')} value={lettering.hex} locked={locked} onPick={(hex, more) => set({ hex }, more)} />
        <Outline key={`outline ${printId}`} {...fields} />
      </div>
      <details className={styles.more}>
        <summary>{t('more')}</summary>
        <div className={slips.fields}>
          <Percent key={`arch ${printId}`} {...fields} of="archPercent" label={t('arch')} least={-40} most={40} />
          <Percent
            key={`spacing ${printId}`}
            {...fields}
            of="trackingPermille"
            label={t('spacing')}
            least={-20}
            most={100}
            unit={10}
          />
          <Choice label={t('case')} of="letterCase" choices={CASES} {...fields} />
          <Percent
            key={`squeeze ${printId}`}
            {...fields}
            of="squeezeFloorPercent"
            label={t('squeeze')}
            least={40}
            most={100}
          />
          {lettering.lines.length > 1 ? (
            <>
              <Choice label={t('align')} of="align" choices={ALIGNMENTS} {...fields} />
              <Percent
                key={`gap ${printId}`}
                {...fields}
                of="lineGapPercent"
                label={t('lineGap')}
                least={0}
                most={400}
              />
            </>
          ) : null}
        </div>
      </details>
    </div>
  );
}

const CASES = ['upper', 'asWritten'] as const;
const ALIGNMENTS = ['left', 'centre', 'right'] as const;

type FieldProps = { lettering: Lettering; set: Set; locked: boolean };

/** The words, on the paper while they are typed: all that is typed until the field is left is undone in one go. */
function Words({ lettering, set, locked, editor }: FieldProps & { editor: TableEditor }) {
  const t = useTranslations('lettering');
  const [typed, setTyped] = useState<string | null>(null);
  const { people } = editor.history.present;
  const columns = columnsOffered(people, { name: t('column.name'), number: t('column.number') });
  const written = typed === null ? null : writtenLines(typed);
  const sentence =
    written === null || written.ok
      ? null
      : t(written.reason === 'notText' ? 'nothing' : written.reason, {
          most: written.reason === 'tooLong' ? LONGEST_LETTERING_LINE : MOST_LETTERING_LINES,
        });

  function onWrite(text: string): void {
    const lines = writtenLines(text);
    if (lines.ok) set({ lines: lines.lines }, typed !== null);
    setTyped(text);
  }

  return (
    <WordsField
      value={typed ?? lettering.lines.join('\n')}
      columns={columns}
      sentence={sentence}
      locked={locked}
      onWrite={onWrite}
      onLeave={() => {
        if (written?.ok) setTyped(null);
      }}
    />
  );
}

type ColourProps = { label: string; value: string; locked: boolean; onPick: (hex: string, continues: boolean) => void };

/** A colour to pick; moving about in the picker is one change. */
export function Colour({ label, value, locked, onPick }: ColourProps) {
  const id = useId();
  const [isPicking, setPicking] = useState(false);
  return (
    <div className={slips.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="color"
        className={styles.colour}
        value={value.toLowerCase()}
        disabled={locked}
        onChange={({ currentTarget }) => {
          onPick(currentTarget.value.toUpperCase(), isPicking);
          setPicking(true);
        }}
        onBlur={() => setPicking(false)}
      />
    </div>
  );
}

/** A line round the letters starts in this width and colour. */
const FIRST_OUTLINE = { hex: '#FFFFFF', widthUm: 2 * UM_PER_MM } as const;

function Outline({ lettering: { outline }, set, locked }: FieldProps) {
  const t = useTranslations('lettering');
  const shown = outline ? t('mm', { mm: outline.widthUm / UM_PER_MM }) : t('noOutline');
  const typed = useTypedText(shown, (written) => {
    const read = typedMillimetres(written, t('noOutline'));
    if (!read.ok) return { ok: false, sentence: t('notMm') };
    set({ outline: read.um === null ? null : { ...(outline ?? FIRST_OUTLINE), widthUm: read.um } });
    return { ok: true };
  });
  return (
    <>
      <ReadingField label={t('outline')} typed={typed} locked={locked} />
      {outline ? (
        <Colour
          label={t('outlineColour')}
          value={outline.hex}
          locked={locked}
          onPick={(hex, more) => set({ outline: { ...outline, hex } }, more)}
        />
      ) : null}
    </>
  );
}

type PercentName = 'archPercent' | 'trackingPermille' | 'lineGapPercent' | 'squeezeFloorPercent';
type PercentProps = FieldProps & {
  of: PercentName;
  label: string;
  least: number;
  most: number;
  /** How many of what is kept make one hundredth. */
  unit?: number;
};

function Percent({ lettering, set, locked, of, label, least, most, unit = 1 }: PercentProps) {
  const t = useTranslations('lettering');
  const typed = useTypedText(t('percent', { percent: lettering[of] / unit }), (written) => {
    const percent = typedPercent(written, { least, most });
    if (percent === null) return { ok: false, sentence: t('notPercent', { least, most }) };
    set({ [of]: Math.round(percent * unit) });
    return { ok: true };
  });
  return <ReadingField label={label} typed={typed} locked={locked} />;
}

type ChoiceProps = FieldProps & {
  label: string;
  of: 'letterCase' | 'align';
  choices: readonly (typeof CASES)[number][] | readonly (typeof ALIGNMENTS)[number][];
};

function Choice({ label, of, choices, lettering, set, locked }: ChoiceProps) {
  const id = useId();
  const t = useTranslations('lettering');
  return (
    <div className={slips.field}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={lettering[of]}
        disabled={locked}
        onChange={(event) => set({ [of]: event.currentTarget.value })}
      >
        {choices.map((choice) => (
          <option key={choice} value={choice}>
            {t(choice)}
          </option>
        ))}
      </select>
    </div>
  );
}
