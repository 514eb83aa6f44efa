/** The page on a bench: a store without a browser's storage, and files that a test hands over. */
import { configure, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, vi } from 'vitest';
import type { JobText, StairText } from '../../src/core/job/jobText';
import { demoJob } from '../../src/document/demoJob';
import type { PickedFile, SavedFile } from '../../src/platform/files';
import type { KeptDraft } from '../../src/state/draft';
import { createPlanner, job } from '../../src/state/plannerStore';
import { App } from '../../src/ui/App';

// A whole page is drawn anew at every key, in a browser made of script, beside other test runs.
vi.setConfig({ testTimeout: 60_000 });
configure({ asyncUtilTimeout: 10_000 });

export interface BenchOptions {
  readonly firstJob?: JobText;
  readonly picked?: PickedFile;
  readonly kept?: KeptDraft;
}

export async function openPage({ firstJob = demoJob, picked, kept = { ok: true } }: BenchOptions = {}) {
  const saved: { name: string; content: string }[] = [];
  const planner = createPlanner({
    firstJob,
    drafts: { load: async () => ({ kind: 'none' }), save: async () => kept, takeOver: () => undefined },
    clock: { now: () => Date.UTC(2026, 0, 5, 9, 30), after: () => () => undefined },
  });
  const files = {
    pickFile: async (): Promise<PickedFile> => picked ?? { kind: 'cancelled' },
    fileFromDrop: async (): Promise<PickedFile> => picked ?? { kind: 'cancelled' },
    saveFile: async (name: string, content: string | Uint8Array): Promise<SavedFile> => {
      saved.push({ name, content: String(content) });
      return { kind: 'saved', name };
    },
  };
  await planner.actions.start();
  const user = userEvent.setup();
  render(<App planner={planner} files={files} />);
  return { planner, user, saved, present: () => job(planner.store.getState()) };
}

/** The example's stair with something else in it. */
export function demoWith(change: Partial<StairText>): JobText {
  return { ...demoJob, stairs: demoJob.stairs.map((stair) => ({ ...stair, ...change })) };
}

/** Bytes of a picked file. */
export function picked(name: string, text: string): PickedFile {
  return { kind: 'picked', name, bytes: new TextEncoder().encode(text) };
}

export type User = ReturnType<typeof userEvent.setup>;

export const STEP_NAMES = ['Measure', 'Choose', 'Lay out', 'Cut', 'Set', 'Check', 'Print'] as const;
export type StepName = (typeof STEP_NAMES)[number];

/** Goes to a step as anyone would. Each is fetched when it is first asked for: only then is it there. */
export async function atStep(user: User, name: StepName) {
  await user.click(within(screen.getByRole('navigation', { name: 'Steps of the job' })).getByRole('button', { name }));
  expect(screen.getByRole('heading', { level: 2, name })).toBeTruthy();
  await waitFor(() => expect(screen.queryByText('Getting this step')).toBeNull());
}

export function form() {
  return within(screen.getByRole('form'));
}

/** The text field with this label, whole. */
export function field(label: string): HTMLInputElement {
  return form().getByLabelText(label, { selector: 'input' });
}

/** Everything that is described at a control, as a screen reader would read it on. */
export function describedBy(control: HTMLElement): string {
  const ids = (control.getAttribute('aria-describedby') ?? '').split(' ');
  return ids.map((id) => readBy(document.getElementById(id))).join(' ');
}

/** What a person reads there: a space that keeps a length together is a space. */
export function readBy(element: Element | null | undefined): string {
  return (element?.textContent ?? '').replaceAll('\u00a0', ' ');
}

export async function retype(user: User, control: HTMLElement, text: string) {
  await user.clear(control);
  await user.paste(text);
}
