/** A job file can be let go anywhere on the page. */
import { useEffect, useState } from 'react';

export function useDropTarget(take: (event: DragEvent) => Promise<void>): boolean {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    function onDragOver(event: DragEvent): void {
      if (!hasFiles(event)) return;
      event.preventDefault();
      setOver(true);
    }
    function onDragLeave(event: DragEvent): void {
      // Leaving the window and not just one element for the next.
      if (event.relatedTarget === null) setOver(false);
    }
    function onDrop(event: DragEvent): void {
      setOver(false);
      if (hasFiles(event)) void take(event);
    }
    document.addEventListener('dragover', onDragOver);
    document.addEventListener('dragleave', onDragLeave);
    document.addEventListener('drop', onDrop);
    return () => {
      document.removeEventListener('dragover', onDragOver);
      document.removeEventListener('dragleave', onDragLeave);
      document.removeEventListener('drop', onDrop);
    };
  }, [take]);
  return isOver;
}
