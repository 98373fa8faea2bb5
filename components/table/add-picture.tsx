import { type ChangeEvent, type ReactNode, useId, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Location, LocationId } from '@/lib/domain/layout/locations';
import { ACCEPTED_ART } from '../art/accepted-art';
import type { Picture } from '../art/upload-picture';
import { Button } from '../ui/button';
import { FormNotice } from '../ui/form-notice';
import styles from './add-picture.module.css';
import { LocationSelect } from './location-select';
import type { UploadProgress } from './use-upload';

type AddPictureProps = {
  pictures: readonly Picture[];
  offered: readonly Location[];
  /** Where a picture most likely goes next. */
  likely: LocationId;
  href: (sha256: string) => string;
  progress: UploadProgress;
  /** Takes in a file; the picture, or null where it was not taken. */
  onFile: (file: File) => Promise<Picture | null>;
  onPlace: (picture: Picture, locationId: LocationId) => void;
  /** A way to add one with the phone. */
  phone: ReactNode;
};

/** The last slip: a picture of the job, or a new one from this computer, laid on the garment at a location. */
export function AddPicture({ pictures, offered, likely, href, progress, onFile, onPlace, phone }: AddPictureProps) {
  const t = useTranslations('table.add');
  const id = useId();
  const [chosenId, setChosenId] = useState<string | null>(null);
  const [chosenLocation, setChosenLocation] = useState<LocationId | null>(null);
  // One that has just come is the one to be laid on.
  const [atFirst] = useState(pictures.length);
  const newest = pictures.length > atFirst || pictures.length === 1 ? pictures.at(-1) : undefined;
  const picture = pictures.find(({ artId }) => artId === chosenId) ?? newest;
  const locationId = chosenLocation ?? likely;

  async function chooseFile({ currentTarget }: ChangeEvent<HTMLInputElement>): Promise<void> {
    const [file] = currentTarget.files ?? [];
    currentTarget.value = '';
    const taken = file ? await onFile(file) : null;
    if (taken) setChosenId(taken.artId);
  }

  return (
    <section id="add-picture" tabIndex={-1} className={styles.add} aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`} className={styles.title}>
        {t('title')}
      </h3>
      {pictures.length > 0 ? (
        <fieldset className={styles.pictures}>
          <legend className="visually-hidden">{t('pictures')}</legend>
          {pictures.map(({ artId, name, art }) => (
            <label key={artId} className={styles.picture}>
              <input
                type="radio"
                name={`${id}-picture`}
                checked={picture?.artId === artId}
                onChange={() => setChosenId(artId)}
              />
              {/* biome-ignore lint/performance/noImgElement: a small copy made by our own server, shown as it is */}
              <img src={href(art.sha256)} alt="" width={art.widthPx} height={art.heightPx} draggable={false} />
              <span>{name}</span>
            </label>
          ))}
        </fieldset>
      ) : null}
      <div className={styles.file}>
        <input
          id={`${id}-file`}
          type="file"
          accept={ACCEPTED_ART}
          aria-describedby={`${id}-hint`}
          disabled={progress.kind === 'sending'}
          onChange={(event) => void chooseFile(event)}
        />
        <label htmlFor={`${id}-file`}>
          <span className={styles.onTable}>{t('file')}</span>
          <span className={styles.inHand}>{t('fileOnPhone')}</span>
        </label>
        <p id={`${id}-hint`}>
          {t('hint')} <span className={styles.onTable}>{t('hintDrop')}</span>
        </p>
      </div>
      <div className={styles.onTable}>{phone}</div>
      <div role="status" className={styles.status}>
        {progress.kind === 'sending' ? (
          <>
            <p className={styles.sending}>
              {progress.share < 1
                ? t('sending', { name: progress.name, percent: Math.round(progress.share * 100) })
                : t('reading', { name: progress.name })}
            </p>
            <progress className={styles.progress} value={progress.share < 1 ? progress.share : undefined} />
          </>
        ) : null}
      </div>
      {progress.kind === 'refused' ? <FormNotice kind="stop" title={progress.sentence} /> : null}
      {pictures.length > 0 ? (
        <div className={styles.place}>
          <LocationSelect label={t('location')} value={locationId} offered={offered} onChoose={setChosenLocation} />
          <Button
            disabled={!picture}
            onClick={() => {
              if (!picture) return;
              onPlace(picture, locationId);
              setChosenLocation(null);
            }}
          >
            {t('place')}
          </Button>
        </div>
      ) : null}
    </section>
  );
}
