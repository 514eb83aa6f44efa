import { describe, expect, it } from 'vitest';
import { findBrowser } from './browser.mjs';

/** A machine with nothing on it; each test gives it what it needs and reads what was asked. */
function bareMachine(given = {}) {
  const asked = [];
  const note =
    (name, answer) =>
    (...args) => {
      asked.push([name, ...args].join(' '));
      return typeof answer === 'function' ? answer(...args) : answer;
    };
  const answers = {
    wish: undefined,
    which: undefined,
    runs: true,
    playwrightProgram: undefined,
    download: false,
    isDebianRoot: false,
    aptInstall: false,
    aptUpdate: false,
    ...given,
  };
  const machine = Object.fromEntries(Object.entries(answers).map(([name, answer]) => [name, note(name, answer)]));
  return { machine, asked };
}

describe('finding a browser', () => {
  it('takes the one that was wished for before any other', () => {
    const { machine } = bareMachine({ wish: '/opt/mine', which: (name) => `/bin/${name}` });
    expect(findBrowser(machine)).toEqual({ program: '/opt/mine' });
  });

  it('says that a wished one does not run, and takes no other in its place', () => {
    const { machine } = bareMachine({ wish: '/opt/mine', runs: (path) => path !== '/opt/mine', which: () => '/bin/x' });
    const answer = findBrowser(machine);
    expect(answer.program).toBeUndefined();
    expect(answer.sentence).toContain('/opt/mine');
  });

  it('takes a known name on the path, in their order, and passes over one that does not start', () => {
    const { machine } = bareMachine({
      which: (name) => (name.startsWith('chromium') ? `/bin/${name}` : undefined),
      runs: (path) => path !== '/bin/chromium',
    });
    expect(findBrowser(machine)).toEqual({ program: '/bin/chromium-browser' });
  });

  it('takes an earlier download when the path has none', () => {
    const { machine } = bareMachine({ playwrightProgram: '/kept/chrome' });
    expect(findBrowser(machine)).toEqual({ program: '/kept/chrome' });
  });

  it('brings nothing onto the machine unless it may', () => {
    const { machine, asked } = bareMachine({ download: true, isDebianRoot: true, aptInstall: true });
    expect(findBrowser(machine).sentence).toContain('PITCHBOARD_BROWSER');
    expect(asked.filter((name) => /download|apt/.test(name))).toEqual([]);
  });

  it('downloads when it may, and uses what came', () => {
    let came = false;
    const { machine, asked } = bareMachine({
      download: () => (came = true),
      playwrightProgram: () => (came ? '/kept/chrome' : undefined),
    });
    expect(findBrowser(machine, { mayInstall: true })).toEqual({ program: '/kept/chrome' });
    expect(asked).not.toContain('aptInstall');
  });

  it('installs the system package after a failed download, renewing the package list only if that is needed', () => {
    let renewed = false;
    let came = false;
    const { machine, asked } = bareMachine({
      isDebianRoot: true,
      aptInstall: () => (came = renewed),
      aptUpdate: () => (renewed = true),
      which: (name) => (came && name === 'chromium' ? '/bin/chromium' : undefined),
    });
    expect(findBrowser(machine, { mayInstall: true })).toEqual({ program: '/bin/chromium' });
    expect(asked.filter((name) => name.startsWith('apt'))).toEqual(['aptInstall', 'aptUpdate', 'aptInstall']);
  });

  it('leaves the system packages alone without the right to them', () => {
    const { machine, asked } = bareMachine({ isDebianRoot: false, aptInstall: true });
    expect(findBrowser(machine, { mayInstall: true }).sentence).toContain('chromium');
    expect(asked.filter((name) => name.startsWith('apt'))).toEqual([]);
  });

  it('goes on to the system package when the download is there but cannot start', () => {
    let installed = false;
    const { machine } = bareMachine({
      download: true,
      playwrightProgram: '/kept/chrome',
      runs: (path) => path !== '/kept/chrome',
      isDebianRoot: true,
      aptInstall: () => (installed = true),
      which: (name) => (installed && name === 'chromium' ? '/bin/chromium' : undefined),
    });
    expect(findBrowser(machine, { mayInstall: true })).toEqual({ program: '/bin/chromium' });
  });
});
