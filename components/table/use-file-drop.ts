import { type DragEvent, useState } from 'react';

/** Files let go over an element, and whether some are held over it. */
export function useFileDrop(onFiles: (files: readonly File[]) => void) {
  const [isOver, setIsOver] = useState(false);

  function onDragOver(event: DragEvent): void {
    if (!event.dataTransfer.types.includes('Files')) return;
    event.preventDefault();
    setIsOver(true);
  }

  function onDragLeave(event: DragEvent): void {
    const to = event.relatedTarget;
    if (!(to instanceof Node && event.currentTarget.contains(to))) setIsOver(false);
  }

  function onDrop(event: DragEvent): void {
    if (!event.dataTransfer.types.includes('Files')) return;
    event.preventDefault();
    setIsOver(false);
    onFiles([...event.dataTransfer.files]);
  }

  return { isOver, handlers: { onDragOver, onDragLeave, onDrop } };
}
