/**
 * Calls `run` whenever the page may be about to go. Tablets often give no other warning than
 * being hidden, and `beforeunload` not at all.
 * @returns a function that stops listening
 */
export function onLeaving(run: () => void): () => void {
  const whenHidden = (): void => {
    if (document.visibilityState === 'hidden') run();
  };
  document.addEventListener('visibilitychange', whenHidden);
  document.addEventListener('freeze', run);
  window.addEventListener('pagehide', run);
  return () => {
    document.removeEventListener('visibilitychange', whenHidden);
    document.removeEventListener('freeze', run);
    window.removeEventListener('pagehide', run);
  };
}
