'use client';

import { useActionState, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { FlatPointName } from '@/lib/domain/garment/flat';
import {
  type FlatToSet,
  type PhotographSetting,
  type PictureSize,
  type PlacePair,
  setToScale,
} from '@/lib/domain/layout/photograph';
import { takenUm, type WidthToCheck } from '@/lib/domain/layout/photograph-check';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import { FormNotice } from '../ui/form-notice';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SelectField } from '../ui/select-field';
import { SubmitButton } from '../ui/submit-button';
import { CheckFields } from './check-fields';
import { type DrawnFlat, MarkedPicture } from './marked-picture';
import { type Mark, nextMark, startingMarks, withCheck, withMark, withPlaces } from './photograph-marks';
import { placeWords } from './place-words';
import { PointFields } from './point-fields';
import { scaleWords } from './scale-words';
import styles from './setting-form.module.css';
import { refusalWords } from './setting-refusal-words';

type SettingFormProps = {
  action: FormAction;
  src: string;
  picture: PictureSize;
  flat: FlatToSet & DrawnFlat;
  pairs: readonly [PlacePair, ...PlacePair[]];
  width: WidthToCheck | null;
  cutAcrossUm: Micrometres;
  saved: PhotographSetting | null;
  /** The size as it is said. */
  size: string;
  unit: LengthUnit;
};

/** Sets a photograph to scale: by pointer, by keys or by numbers, with the flat's outline following at once. */
export function SettingForm(props: SettingFormProps) {
  const { action, src, picture, flat, pairs, width, cutAcrossUm, saved, size, unit } = props;
  const t = useTranslations('photographs');
  const [state, send] = useActionState(action, unsent());
  const [marked, setMarked] = useState(() => startingMarks(saved, pairs[0], picture, flat));
  const [sentAs, setSentAs] = useState<PhotographSetting | null>(null);
  const set = setToScale(marked, picture, flat);
  const taken = set.ok && marked.check ? takenUm(set.matrix, marked.check) : null;
  const placeOf = (name: FlatPointName) => placeWords(t, flat.side, name);
  const [from, to] = marked.places;
  const labels: Record<Mark, string> = {
    A: placeOf(from),
    B: placeOf(to),
    C: t('setting.widthC'),
    D: t('setting.widthD'),
  };
  const move = (mark: Mark, at: { x: number; y: number }) => setMarked((now) => withMark(now, mark, at, picture));
  // What came of the points that were sent is not said of others.
  const isAsSent = sentAs !== null && same(sentAs, marked);
  const refusal = isAsSent ? state.refusal : null;
  const tape = set.ok ? formatLength(set.tapeUm, unit) : null;
  return (
    <form action={send} className={styles.setting} onSubmit={() => setSentAs(marked)}>
      <div className={styles.picture}>
        <MarkedPicture
          src={src}
          picture={picture}
          flat={flat}
          matrix={set.ok ? set.matrix : null}
          marked={marked}
          readings={{ tape, width: taken === null ? null : formatLength(taken, unit) }}
          words={{
            title: t('setting.photograph'),
            mark: (letter, { x, y }) => t('setting.marker', { letter, place: labels[letter], x, y }),
          }}
          onTake={(inHand) => setMarked((now) => ({ ...now, inHand }))}
          onMove={move}
          onPlace={(at) =>
            setMarked((now) => ({ ...withMark(now, now.inHand, at, picture), inHand: nextMark(now, now.inHand) }))
          }
        />
        <p className={styles.keys}>{t('setting.keys')}</p>
      </div>
      <div className={styles.slip}>
        {refusal === null ? null : (
          <FormProblems state={state} title={null} mistakes={[]} refusal={refusalWords(t, refusal)} />
        )}
        <SelectField
          name="places"
          label={t('setting.places')}
          options={pairs.map((pair) => ({
            value: pair.join(' '),
            label: t('setting.pair', { from: placeOf(pair[0]), to: placeOf(pair[1]) }),
          }))}
          value={marked.places.join(' ')}
          onChange={({ target }) => {
            const pair = pairs.find((each) => each.join(' ') === target.value);
            if (pair) setMarked((now) => withPlaces(now, pair, picture, flat));
          }}
        />
        <PointFields
          legend={t('setting.pointA', { place: labels.A })}
          name="a"
          at={marked.points[0]}
          onMove={(at) => move('A', at)}
        />
        <PointFields
          legend={t('setting.pointB', { place: labels.B })}
          name="b"
          at={marked.points[1]}
          onMove={(at) => move('B', at)}
        />
        {set.ok ? (
          <p className={styles.reading}>
            {t('setting.tape', { size, tape: formatLength(set.tapeUm, unit) })} {scaleWords(t, set, unit)}
          </p>
        ) : refusal === null ? (
          <FormNotice kind="look" title={refusalWords(t, set.reason)} />
        ) : null}
        {width ? (
          <CheckFields
            width={width}
            matrix={set.ok ? set.matrix : null}
            check={marked.check}
            cutAcrossUm={cutAcrossUm}
            unit={unit}
            onMove={move}
            onToggle={() => setMarked((now) => withCheck(now, set, width, picture))}
          />
        ) : null}
        <div className={styles.end}>
          <SubmitButton kind="primary" waiting={t('setting.saving')}>
            {t('setting.save')}
          </SubmitButton>
          <span role="status" className={styles.kept}>
            {state.done && isAsSent ? `✓ ${t('setting.saved')}` : null}
          </span>
        </div>
      </div>
    </form>
  );
}

function same(a: PhotographSetting, b: PhotographSetting): boolean {
  const text = ({ places, points, check }: PhotographSetting) => JSON.stringify([places, points, check]);
  return text(a) === text(b);
}
