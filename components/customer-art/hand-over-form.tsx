'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Messages } from '@/lib/messages/catalogue';
import { ChoosePicture } from '../art/choose-picture';
import { UploadProgress } from '../art/upload-progress';
import { useRefusalWords } from '../art/use-refusal-words';
import { FormNotice } from '../ui/form-notice';
import { handOver } from './hand-over';
import styles from './hand-over-form.module.css';

/** Why a picture was not taken: a code, and the file's kind where that is what was wrong. */
export type RefusedPicture = { readonly reason: string; readonly fileKind: string };

type Doing = { readonly name: string; readonly share: number };

type HandOverFormProps = {
  token: string;
  shop: string;
  /** Whether something was sent before. */
  more: boolean;
  /** Why the form that was sent without scripts was refused. */
  first: RefusedPicture | null;
};

/** Choose one picture or several, and they go; the page then shows what was seen in them. Without scripts, a press more. */
export function HandOverForm({ token, shop, more, first }: HandOverFormProps) {
  const t = useTranslations('customer-art');
  const router = useRouter();
  const sentenceFor = useRefusal(shop);
  const field = useRef<HTMLInputElement>(null);
  const stopping = useRef<AbortController | null>(null);
  const [doing, setDoing] = useState<Doing | null>(null);
  const [refused, setRefused] = useState<RefusedPicture | null>(first);
  const [stopped, setStopped] = useState<string | null>(null);

  async function send(): Promise<void> {
    const input = field.current;
    if (!input?.files?.length) return;
    setRefused(null);
    setStopped(null);
    for (const file of [...input.files]) {
      const { name } = file;
      const controller = new AbortController();
      stopping.current = controller;
      setDoing({ name, share: 0 });
      const sent = await handOver(token, file, (share) => setDoing({ name, share }), controller.signal);
      if (sent.ok) continue;
      if (sent.reason === 'stopped') setStopped(name);
      else setRefused({ reason: sent.reason, fileKind: sent.kind });
      break;
    }
    input.value = '';
    setDoing(null);
    router.refresh();
  }

  const sendChosen = useRef(send);
  // What was chosen before the page's script had come waits for nobody's press.
  useEffect(() => {
    void sendChosen.current();
  }, []);

  return (
    <form className={styles.form} method="post" action={`/api/art/customer/${token}`} encType="multipart/form-data">
      {refused ? <FormNotice kind="stop" title={sentenceFor(refused)} /> : null}
      <ChoosePicture
        field={field}
        words={more ? t('another') : t('choose')}
        hint={t('hint')}
        send={t('send')}
        busy={doing !== null}
        onChange={() => void send()}
      />
      <div role="status">
        {doing ? (
          <UploadProgress
            sending={(percent) => t('sending', { name: doing.name, percent })}
            reading={t('reading', { name: doing.name })}
            share={doing.share}
            stop={t('stop')}
            onStop={() => stopping.current?.abort()}
          />
        ) : null}
        {stopped === null ? null : <p>{t('stopped', { name: stopped })}</p>}
      </div>
    </form>
  );
}

function useRefusal(shop: string): (refused: RefusedPicture) => string {
  const t = useTranslations('customer-art');
  const art = useRefusalWords(t('notReached', { shop }));
  return ({ reason, fileKind }) => {
    const own = `refused.${reason}` as `refused.${keyof Messages['customer-art']['refused']}`;
    return t.has(own) ? t(own, { shop }) : art({ reason, kind: fileKind });
  };
}
