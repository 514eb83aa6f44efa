import { cleanup } from '@testing-library/react';
import { afterEach, beforeAll } from 'vitest';

// Without global test functions the library cannot hook this in by itself, and one test's screen would stay for the next.
afterEach(cleanup);

// A page without a layout has nothing to scroll; the test browser leaves the method out.
Element.prototype.scrollIntoView ??= () => undefined;

// The keypad is fetched by the page when it is needed; a test must not wait for a module to be made.
beforeAll(async () => {
  await import('../../src/ui/keypad/Pad');
});
