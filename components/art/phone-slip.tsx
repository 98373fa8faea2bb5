'use client';

import { useCallback, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { PhoneCode } from './phone-code';
import { PhoneDialog } from './phone-dialog';
import styles from './phone-slip.module.css';
import type { Picture } from './upload-picture';
import { useArrivals } from './use-arrivals';

type PhoneSlipProps = {
  jobId: string;
  /** Makes a code; null where nobody is signed in any more. */
  makeCode: (jobId: string) => Promise<PhoneCode | null>;
  onArrived: (pictures: readonly Picture[]) => void;
  /** Opened from elsewhere too: the button's id. */
  id?: string;
};

/** A press that shows a code for the maker's phone; pictures handed over there appear by themselves while the code is good. */
export function PhoneSlip({ jobId, makeCode, onArrived, id }: PhoneSlipProps) {
  const t = useTranslations('phone');
  const [code, setCode] = useState<PhoneCode | 'making' | 'failed' | null>(null);
  const [until, setUntil] = useState<Date | null>(null);
  const [came, setCame] = useState<readonly string[]>([]);

  const arrived = useCallback(
    (pictures: readonly Picture[]) => {
      setCame((names) => [...names, ...pictures.map(({ name }) => name)]);
      onArrived(pictures);
    },
    [onArrived],
  );
  useArrivals(jobId, until, arrived);

  async function open(): Promise<void> {
    setCode('making');
    setCame([]);
    const made = await makeCode(jobId).catch(() => null);
    setCode(made ?? 'failed');
    if (made) setUntil(made.expiresAt);
  }

  return (
    <>
      <button id={id} type="button" className={styles.open} onClick={() => void open()}>
        {t('open')}
      </button>
      {code === null ? null : (
        <PhoneDialog code={code} came={came} onAgain={() => void open()} onClose={() => setCode(null)} />
      )}
    </>
  );
}
