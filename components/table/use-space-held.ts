import { type KeyboardEvent, type RefObject, useRef } from 'react';

/** Whether Space is held down on an element: the pointer then pushes it, and looks so. */
export function useSpaceHeld(element: RefObject<HTMLElement | null>) {
  const held = useRef(false);
  const hold = (isHeld: boolean) => {
    held.current = isHeld;
    element.current?.toggleAttribute('data-pushed', isHeld);
  };
  return {
    isHeld: () => held.current,
    handlers: {
      onKeyDown: (event: KeyboardEvent) => {
        // In a field or on a button Space is their own.
        if (event.key !== ' ' || event.target !== element.current) return;
        event.preventDefault();
        hold(true);
      },
      onKeyUp: (event: KeyboardEvent) => {
        if (event.key === ' ') hold(false);
      },
      onBlur: () => hold(false),
    },
  };
}
