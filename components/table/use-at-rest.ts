import { useEffect, useState } from 'react';

/** How long a hand has to pause to rest, ms (by eye). */
const REST_MS = 120;

/**
 * A value as it is; while a hand is moving, as it was when the hand last rested: for what is too large to be drawn anew at
 * each frame of a drag.
 */
export function useAtRest<Value>(value: Value, isMoving: boolean): Value {
  const [rested, setRested] = useState(value);
  if (!isMoving && rested !== value) setRested(value);
  useEffect(() => {
    if (!isMoving) return;
    const timer = setTimeout(() => setRested(value), REST_MS);
    return () => clearTimeout(timer);
  }, [value, isMoving]);
  return isMoving ? rested : value;
}
