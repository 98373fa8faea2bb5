import { useId, useState } from 'react';
import { useTranslations } from 'use-intl';
import { v7 as newId } from 'uuid';
import type { Location, LocationId } from '@/lib/domain/layout/locations';
import { letteringOf } from '@/lib/domain/layout/print-content';
import { garmentOf } from '@/lib/domain/layout/sizes';
import { type FontRef, LONGEST_LETTERING_LINE, MOST_LETTERING_LINES } from '@/lib/domain/lettering/lettering';
import { fieldsIn } from '@/lib/domain/lettering/lettering-text';
import { locationsOffered } from '@/lib/editor/commands/add-print';
import { addLettering } from '@/lib/editor/commands/lettering-print';
import { columnsOffered, likelyLetteringLocation, newLettering } from '@/lib/editor/new-lettering';
import { afterCommand, type TableEditor, tableState } from '@/lib/editor/table-editor';
import { writtenLines } from '@/lib/editor/written-lines';
import { Button } from '../ui/button';
import add from './add-picture.module.css';
import { FontSelect, fontName } from './font-select';
import styles from './lettering.module.css';
import { useLetteringTools } from './lettering-tools';
import { LocationSelect } from './location-select';
import slips from './slips.module.css';
import { WordsField } from './words-field';

/** A slip under those of the prints: names and numbers of the list, or fixed words, set on the garment at a location. */
export function AddLettering({ editor }: { editor: TableEditor }) {
  const t = useTranslations('lettering');
  const readings = useTranslations('readings');
  const id = useId();
  const { fonts, withFont, failedFont, openingFont } = useLetteringTools();
  const state = tableState(editor);
  const likely = likelyLetteringLocation(state);
  const [chosenLocation, setChosenLocation] = useState<LocationId | null>(null);
  const [chosenFont, setChosenFont] = useState<FontRef | null>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const [sentence, setSentence] = useState<string | null>(null);
  const font = chosenFont ?? lastFont(editor) ?? fonts.offered[0]?.ref;
  const locationId = chosenLocation ?? likely;
  const { selection, layout } = state;
  if (!(font && locationId && selection)) return null;
  const offered: readonly Location[] = locationsOffered(state);
  const fresh = newLettering(locationId, font, garmentOf(layout, selection.garmentId).cloth.hex);
  const words = typed ?? fresh.lines.join('\n');
  const columns = columnsOffered(layout.people, { name: t('column.name'), number: t('column.number') });

  function place(): void {
    const written = writtenLines(words);
    if (!written.ok) {
      const most = written.reason === 'tooLong' ? LONGEST_LETTERING_LINE : MOST_LETTERING_LINES;
      setSentence(
        written.reason === 'nothing' || written.reason === 'notText' ? t('add.noWords') : t(written.reason, { most }),
      );
      return;
    }
    const lettering = { ...fresh, lines: written.lines };
    const named = fieldsIn(written.lines).map(
      (columnId) => columns.find((each) => each.columnId === columnId)?.name ?? columnId,
    );
    const what = named.length > 0 ? named.join(', ') : (written.lines[0] ?? '').trim();
    const name = `${what}, ${readings(`place.${locationId ?? 'upperBack'}`)}`;
    const printId = newId();
    if (!font || !locationId) return;
    withFont(font, (before) => afterCommand(before, addLettering, { printId, name, lettering, locationId, newId }));
    setTyped(null);
    setChosenLocation(null);
  }

  return (
    <section id="add-lettering" tabIndex={-1} className={add.add} aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`} className={add.title}>
        {t('add.title')}
      </h3>
      <p className={styles.text}>{t('add.text')}</p>
      <WordsField
        value={words}
        columns={columns}
        sentence={sentence}
        onWrite={(text) => {
          setTyped(text);
          setSentence(null);
        }}
      />
      <FontSelect value={font} fonts={fonts} onChoose={setChosenFont} />
      {failedFont ? (
        <p role="alert" className={slips.wrong}>
          {t('missingFont', { font: fontName(failedFont) })}
        </p>
      ) : null}
      <p role="status" className={styles.status}>
        {openingFont ? t('openingFont', { font: fontName(openingFont) }) : ''}
      </p>
      <div className={add.place}>
        <LocationSelect label={t('add.location')} value={locationId} offered={offered} onChoose={setChosenLocation} />
        <Button onClick={place}>{t('add.place')}</Button>
      </div>
    </section>
  );
}

/** The font of the lettering that was laid on last: names and numbers are seldom in two. */
function lastFont(editor: TableEditor): FontRef | null {
  const found = editor.history.present.prints.findLast((print) => letteringOf(print) !== null);
  return found ? (letteringOf(found)?.font ?? null) : null;
}
