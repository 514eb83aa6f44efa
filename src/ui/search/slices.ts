/**
 * Long work a little at a time: after each slice the page may paint, scroll and take a key. All of it takes a
 * few milliseconds, less than handing the question to a worker and the answer back.
 */

/** Milliseconds of one slice: a third of a frame, so that the page has the rest. */
const SLICE_MS = 5;

/**
 * @param early is given what the work hands out on its way
 * @returns a function that puts an end to it; then neither is called any more
 */
export function inSlices<T>(
  work: Generator<T | undefined, T>,
  done: (value: T) => void,
  early: (value: T) => void = () => undefined,
): () => void {
  const { port1, port2 } = new MessageChannel();
  let isWanted = true;
  const stop = () => {
    isWanted = false;
    port1.close();
  };
  port1.onmessage = () => {
    if (!isWanted) return;
    const end = performance.now() + SLICE_MS;
    do {
      const step = work.next();
      if (step.done === true) {
        stop();
        done(step.value);
        return;
      }
      if (step.value !== undefined) early(step.value);
    } while (performance.now() < end);
    port2.postMessage(null);
  };
  port2.postMessage(null);
  return stop;
}
