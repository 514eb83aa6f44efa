/** The page's side of the workshop: hands an order over, and waits. It is set up with the first order and stays. */
import type { Answer, Order } from './order';

/** The policy of the page (vite.config.ts) lets nobody else name a script to run, and this one name no other. */
const POLICY = 'pitchboard-workshop';

interface Reply {
  readonly number: number;
  readonly answer?: Answer;
}

interface Workshop {
  readonly worker: Worker;
  readonly waiting: Map<number, { readonly done: (answer: Answer) => void; readonly broken: () => void }>;
}

let open: Workshop | null = null;
let count = 0;

/** @returns the file, or why there is none; rejects where the workshop itself cannot be set up or breaks down */
export async function orderFile(order: Order): Promise<Answer> {
  const { default: address } = await import('./worker?worker&url');
  return new Promise((resolve, reject) => {
    open ??= setUp(address);
    count += 1;
    const broken = () => reject(new Error('The workshop broke down.'));
    open.waiting.set(count, { done: resolve, broken });
    open.worker.postMessage({ number: count, order });
  });
}

function setUp(address: string): Workshop {
  const worker = new Worker(vouchedFor(address), { type: 'module' });
  const waiting: Workshop['waiting'] = new Map();
  worker.addEventListener('message', ({ data: { number, answer } }: MessageEvent<Reply>) => {
    const order = waiting.get(number);
    waiting.delete(number);
    if (answer === undefined) order?.broken();
    else order?.done(answer);
  });
  // It could not be fetched, or it is out of memory: the next order sets up another.
  worker.addEventListener('error', () => {
    worker.terminate();
    open = null;
    for (const { broken } of waiting.values()) broken();
  });
  return { worker, waiting };
}

interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(): string }): { createScriptURL(text: string): string };
}

let policy: ReturnType<TrustedTypes['createPolicy']> | null = null;

/** @returns the one address that is run; a browser that wants it vouched for has it so */
function vouchedFor(address: string): string {
  const { trustedTypes } = globalThis as { readonly trustedTypes?: TrustedTypes };
  policy ??= trustedTypes?.createPolicy(POLICY, { createScriptURL: () => address }) ?? null;
  return policy?.createScriptURL('') ?? address;
}
