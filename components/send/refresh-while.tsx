'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useState } from 'react';

const EVERY_MS = 2_000;
const AT_MOST = 30;

/** Looks again every two seconds, for a minute, while something is still under way. */
export function RefreshWhile({ underWay }: { underWay: boolean }) {
  const router = useRouter();
  const [looks, setLooks] = useState(0);
  useEffect(() => {
    if (!underWay || looks >= AT_MOST) return;
    const timer = setTimeout(() => {
      router.refresh();
      setLooks(looks + 1);
    }, EVERY_MS);
    return () => clearTimeout(timer);
  }, [underWay, looks, router]);
  return null;
}
