// @vitest-environment jsdom
import { expect, test, vi } from 'vitest';
import { onLeaving } from '../../../src/platform/leaving';

function becomes(visibility: DocumentVisibilityState): void {
  vi.spyOn(document, 'visibilityState', 'get').mockReturnValue(visibility);
  document.dispatchEvent(new Event('visibilitychange'));
}

test('every way in which a page may go is heard, until nobody listens', () => {
  const run = vi.fn();
  const stop = onLeaving(run);
  becomes('hidden');
  expect(run).toHaveBeenCalledTimes(1);
  becomes('visible');
  expect(run).toHaveBeenCalledTimes(1);
  window.dispatchEvent(new Event('pagehide'));
  document.dispatchEvent(new Event('freeze'));
  expect(run).toHaveBeenCalledTimes(3);
  stop();
  becomes('hidden');
  window.dispatchEvent(new Event('pagehide'));
  document.dispatchEvent(new Event('freeze'));
  expect(run).toHaveBeenCalledTimes(3);
});
