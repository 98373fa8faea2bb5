'use client';

import { useRouter } from 'next/navigation';
import { useCallback } from 'react';
import type { PhoneCode } from '../art/phone-code';
import { PhoneSlip } from '../art/phone-slip';

type ArtFromPhoneProps = { jobId: string; makeCode: (jobId: string) => Promise<PhoneCode | null> };

/** Adds a picture with the phone; the job's page shows it as soon as it came. */
export function ArtFromPhone({ jobId, makeCode }: ArtFromPhoneProps) {
  const router = useRouter();
  const refresh = useCallback(() => router.refresh(), [router]);
  return <PhoneSlip jobId={jobId} makeCode={makeCode} onArrived={refresh} />;
}
