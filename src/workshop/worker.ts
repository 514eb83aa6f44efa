/** Makes files beside the page, so that a package of many sheets never holds up a finger. Orders come one after the other. */
import { makeFile } from './makeFile';
import type { Order } from './order';

addEventListener('message', (event: MessageEvent<{ readonly number: number; readonly order: Order }>) => {
  const { number, order } = event.data;
  makeFile(order).then(
    (answer) => postMessage({ number, answer }, { transfer: answer.ok ? [answer.value.content.buffer] : [] }),
    (error: unknown) => postMessage({ number, failed: String(error) }),
  );
});
