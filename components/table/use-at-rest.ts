import { useEffect, useRef, useState } from 'react';

/** For how many frames a hand has to pause to rest: an eighth of a second at 60 Hz (by eye). */
const REST_FRAMES = 8;

/**
 * A value as it is; while a hand is moving, as it was when the hand last rested: for what is too large to be drawn anew at
 * each frame of a drag. Frames are counted and not time, so that a machine that falls behind is not taken for a rest.
 */
export function useAtRest<Value>(value: Value, isMoving: boolean): Value {
  const [rested, setRested] = useState(value);
  const latest = useRef({ value, frames: 0 });
  if (!isMoving && rested !== value) setRested(value);

  useEffect(() => {
    latest.current = { value, frames: 0 };
  }, [value]);

  useEffect(() => {
    if (!isMoving) return;
    let frame = requestAnimationFrame(function onFrame() {
      latest.current.frames += 1;
      if (latest.current.frames === REST_FRAMES) setRested(latest.current.value);
      frame = requestAnimationFrame(onFrame);
    });
    return () => cancelAnimationFrame(frame);
  }, [isMoving]);
  return isMoving ? rested : value;
}
