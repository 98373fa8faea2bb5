import { useCallback, useState } from 'react';
import { readDotsPerMm, realPxPerMm } from '@/lib/editor/real-size';

const KEPT_AS = 'yokemark.dots-per-mm';

/** How fine this device's screen is, as its maker measured it; kept on the device, since it is nobody else's. */
export function useScreenSize() {
  const [dotsPerMm, setDotsPerMm] = useState(kept);
  const keep = useCallback((dots: number) => {
    setDotsPerMm(dots);
    try {
      localStorage.setItem(KEPT_AS, String(dots));
    } catch {
      // A private window keeps nothing: it then holds until the page is left.
    }
  }, []);
  return {
    dotsPerMm,
    /** CSS pixels per millimetre at real size, or null while that is not known. */
    pxPerMm: dotsPerMm === null ? null : realPxPerMm(dotsPerMm, window.devicePixelRatio),
    keep,
  };
}

function kept(): number | null {
  try {
    return readDotsPerMm(localStorage.getItem(KEPT_AS));
  } catch {
    return null;
  }
}
