import { useCallback, useState } from 'react';
import { v7 as newId } from 'uuid';
import type { LocationId } from '@/lib/domain/layout/locations';
import { addPrint } from '@/lib/editor/commands/add-print';
import { likelyLocation } from '@/lib/editor/likely-location';
import { nameFromFile } from '@/lib/editor/print-name';
import { afterCommand } from '@/lib/editor/table-editor';
import type { Picture } from '../art/upload-picture';
import type { Change } from './use-reading';
import { type UploadProgress, useUpload } from './use-upload';

type Pictures = {
  readonly pictures: readonly Picture[];
  readonly progress: UploadProgress;
  /** Pictures that came to the job another way. */
  readonly add: (pictures: readonly Picture[]) => void;
  /** Takes in a file; the picture, or null where it was not taken: the progress then says why. */
  readonly takeIn: (file: File) => Promise<Picture | null>;
  /** Lays a picture on the garment: at a location, or (null) where it most likely goes. */
  readonly place: (picture: Picture, locationId: LocationId | null) => void;
  /** Takes files in one after another and lays each where it most likely goes. */
  readonly takeDropped: (files: readonly File[]) => Promise<void>;
};

/** The job's pictures: those it has, those that come in, and laying one on the garment. */
export function usePictures(jobId: string, first: readonly Picture[], change: Change): Pictures {
  const [pictures, setPictures] = useState(first);
  const { progress, take } = useUpload(jobId);

  const add = useCallback((more: readonly Picture[]) => {
    setPictures((all) => {
      const fresh = more.filter(({ artId }) => !all.some((known) => known.artId === artId));
      return fresh.length === 0 ? all : [...all, ...fresh];
    });
  }, []);

  const takeIn = useCallback(
    async (file: File): Promise<Picture | null> => {
      const picture = await take(file);
      if (picture) setPictures((all) => [...all.filter(({ artId }) => artId !== picture.artId), picture]);
      return picture;
    },
    [take],
  );

  const place = useCallback(
    ({ name, art }: Picture, locationId: LocationId | null): void => {
      const printId = newId();
      change((before) => {
        const likely = likelyLocation({ layout: before.history.present, selection: before.selection });
        const where = locationId ?? likely;
        if (!where) return before;
        const called = nameFromFile(name) ?? '';
        return afterCommand(before, addPrint, { printId, name: called, art, locationId: where, newId });
      });
    },
    [change],
  );

  async function takeDropped(files: readonly File[]): Promise<void> {
    for (const file of files) {
      const picture = await takeIn(file);
      if (!picture) return;
      place(picture, null);
    }
  }

  return { pictures, progress, add, takeIn, place, takeDropped };
}
