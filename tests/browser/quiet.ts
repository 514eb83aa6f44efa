/**
 * The test function of every file here: a page that complains, breaks its policy or asks anybody but its
 * own host fails its test, whatever the test itself was about.
 */
import { test as base, type ConsoleMessage, expect, type Request } from '@playwright/test';

export const test = base.extend<{ quiet: undefined }>({
  quiet: [
    async ({ context, baseURL }, use) => {
      const heard: string[] = [];
      const own = new URL(baseURL as string).origin;
      context.on('console', (message: ConsoleMessage) => {
        if (message.type() === 'error' || message.type() === 'warning') heard.push(message.text());
      });
      context.on('weberror', (broken) => heard.push(broken.error().message));
      context.on('request', (request: Request) => {
        const { origin, protocol } = new URL(request.url());
        if (origin !== own && protocol !== 'blob:') heard.push(`A request to ${request.url()}`);
      });
      await context.addInitScript(() => {
        // Through the console, because a list on the page would be lost with a reload.
        document.addEventListener('securitypolicyviolation', (violation) => {
          console.error(`Policy broken: ${violation.violatedDirective} by ${violation.blockedURI}`);
        });
      });
      await use(undefined);
      expect(heard, 'what the page complained about, or asked of others').toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
