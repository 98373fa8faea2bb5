'use client';

import { type ChangeEvent, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Messages } from '@/lib/messages/catalogue';
import { FormNotice } from '../ui/form-notice';
import { ChoosePicture } from './choose-picture';
import styles from './phone-form.module.css';
import { uploadFromPhone } from './upload-picture';
import { UploadProgress } from './upload-progress';
import { useRefusalWords } from './use-refusal-words';

/** What came of a picture: its name where it was taken, or the code of what was wrong with it. */
export type PhoneOutcome =
  | { readonly kind: 'taken'; readonly name: string }
  | { readonly kind: 'stopped'; readonly name: string }
  | { readonly kind: 'refused'; readonly reason: string; readonly fileKind: string };

type Doing = { readonly kind: 'sending'; readonly name: string; readonly share: number };

type PhoneFormProps = {
  token: string;
  /** What came of the form that was sent without scripts. */
  first: PhoneOutcome | null;
};

/** On the maker's phone: choose a picture, and it goes. Without scripts it goes with a press more. */
export function PhoneForm({ token, first }: PhoneFormProps) {
  const t = useTranslations('phone.page');
  const sentenceFor = usePhoneRefusal();
  const [doing, setDoing] = useState<Doing | null>(null);
  const stopping = useRef<AbortController | null>(null);
  const [came, setCame] = useState<readonly PhoneOutcome[]>(first ? [first] : []);

  async function choose({ currentTarget }: ChangeEvent<HTMLInputElement>): Promise<void> {
    const files = [...(currentTarget.files ?? [])];
    for (const file of files) {
      const { name } = file;
      setDoing({ kind: 'sending', name, share: 0 });
      const controller = new AbortController();
      stopping.current = controller;
      const onProgress = (share: number) => setDoing({ kind: 'sending', name, share });
      const sent = await uploadFromPhone(token, file, onProgress, controller.signal);
      const outcome: PhoneOutcome = sent.ok
        ? { kind: 'taken', name: sent.picture.name }
        : sent.reason === 'stopped'
          ? { kind: 'stopped', name }
          : { kind: 'refused', reason: sent.reason, fileKind: sent.kind };
      setCame((all) => [...all.filter(({ kind }) => kind === 'taken'), outcome]);
      if (!sent.ok) break;
    }
    setDoing(null);
    currentTarget.value = '';
  }

  const taken = came.filter((outcome) => outcome.kind === 'taken');
  const last = came.at(-1);
  return (
    <form className={styles.form} method="post" action={`/api/art/phone/${token}`} encType="multipart/form-data">
      <ChoosePicture
        words={taken.length > 0 ? t('another') : t('choose')}
        hint={t('hint')}
        send={t('send')}
        busy={doing !== null}
        onChange={(event) => void choose(event)}
      />
      <div role="status" className={styles.status}>
        {doing ? (
          <UploadProgress
            sending={(percent) => t('sending', { name: doing.name, percent })}
            reading={t('reading', { name: doing.name })}
            share={doing.share}
            stop={t('stop')}
            onStop={() => stopping.current?.abort()}
          />
        ) : null}
        {taken.map(({ name }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two pictures can have one name, and the list only grows
          <p key={index} className={styles.taken}>
            <span aria-hidden="true">✓ </span>
            {t('taken', { name })}
          </p>
        ))}
      </div>
      {last?.kind === 'stopped' ? <p className={styles.hint}>{t('stopped', { name: last.name })}</p> : null}
      {last?.kind === 'refused' ? <FormNotice kind="stop" title={sentenceFor(last)} /> : null}
    </form>
  );
}

function usePhoneRefusal(): (refused: Extract<PhoneOutcome, { kind: 'refused' }>) => string {
  const page = useTranslations('phone.page');
  const t = useTranslations('phone');
  const art = useRefusalWords(page('notReached'));
  return ({ reason, fileKind }) => {
    const own = `refused.${reason}` as `refused.${keyof Messages['phone']['refused']}`;
    const closed = `closed.${reason}Text` as `closed.${'wrong' | 'overdue' | 'tooManyWrong'}Text`;
    if (t.has(own)) return t(own);
    return t.has(closed) ? t(closed) : art({ reason, kind: fileKind });
  };
}
