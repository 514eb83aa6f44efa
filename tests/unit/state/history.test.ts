import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobText } from '../../../src/core/job/jobText';
import { edit, endGesture, type History, MAX_STEPS, redo, startHistory, undo } from '../../../src/state/history';
import { jobNamed } from './sampleJobs';

const [a, b, c, d] = [jobNamed('a'), jobNamed('b'), jobNamed('c'), jobNamed('d')];

function names({ past, present, future }: History): string {
  const list = (jobs: readonly JobText[]) => jobs.map((job) => job.name).join(' ');
  return `${list(past)} [${present.name}] ${list(future)}`.trim();
}

describe('one entry a gesture', () => {
  test('edits with the same key replace the top entry', () => {
    const typed = edit(edit(edit(startHistory(a), b, 'rise'), c, 'rise'), d, 'rise');
    expect(names(typed)).toBe('a [d]');
    expect(undo(typed).present).toBe(a);
  });

  test('another key begins another step', () => {
    expect(names(edit(edit(startHistory(a), b, 'rise'), c, 'run'))).toBe('a b [c]');
  });

  test('edits without a key are steps by themselves', () => {
    expect(names(edit(edit(startHistory(a), b, null), c, null))).toBe('a b [c]');
  });

  test('the same key after the gesture has ended is a new step', () => {
    expect(names(edit(endGesture(edit(startHistory(a), b, 'rise')), c, 'rise'))).toBe('a b [c]');
  });

  test('a gesture that comes back to where it began is no step', () => {
    const there = edit(edit(startHistory(a), b, 'rise'), jobNamed('a'), 'rise');
    expect(names(endGesture(there))).toBe('[a]');
    expect(endGesture(there).present).toBe(a);
  });

  test.each([
    ['undo', (history: History) => redo(undo(history))],
    ['redo', (history: History) => undo(redo(history))],
  ])('%s ends the gesture', (_, there) => {
    const before = edit(startHistory(a), b, 'rise');
    expect(edit(undo(there(before)), c, 'rise').past).toEqual([a]);
  });

  test('the first edit of a gesture after undo keeps what undo came to', () => {
    const back = undo(edit(edit(startHistory(a), b, 'rise'), c, 'run'));
    expect(names(edit(back, d, 'rise'))).toBe('a b [d]');
  });
});

test('an edit that changes nothing is no step and keeps redo', () => {
  const back = undo(edit(startHistory(a), b, null));
  expect(edit(back, a, 'rise')).toBe(back);
});

test('an edit after undo forgets what was undone', () => {
  expect(names(edit(undo(edit(startHistory(a), b, null)), c, null))).toBe('a [c]');
});

test('there is nothing before the first and nothing after the last', () => {
  const history = startHistory(a);
  expect(undo(history)).toBe(history);
  expect(redo(history)).toBe(history);
  expect(endGesture(history)).toBe(history);
});

test('the oldest step is forgotten beyond the bound', () => {
  let history = startHistory(jobNamed('0'));
  for (let step = 1; step <= MAX_STEPS + 3; step += 1) history = edit(history, jobNamed(String(step)), null);
  expect(history.past).toHaveLength(MAX_STEPS);
  expect(history.past[0]?.name).toBe('3');
});

test('every entry is the very object that was handed in', () => {
  const history = undo(edit(edit(startHistory(a), b, null), c, null));
  expect([history.past[0], history.present, history.future[0]]).toEqual([a, b, c]);
  expect(history.past[0]).toBe(a);
  expect(history.future[0]).toBe(c);
});

/** All jobs in a row and a finger on one of them: the plainest way to do it. */
class Row {
  private jobs: JobText[];
  private at = 0;
  private key: string | null = null;

  constructor(first: JobText) {
    this.jobs = [first];
  }

  edit(job: JobText, key: string | null): void {
    this.jobs.length = this.at + 1;
    if (key !== null && key === this.key) this.jobs[this.at] = job;
    else this.jobs.push(job);
    if (this.jobs.length > MAX_STEPS + 1) this.jobs.shift();
    this.at = this.jobs.length - 1;
    this.key = key;
  }

  move(by: 1 | -1): void {
    if (this.jobs[this.at + by] === undefined) return;
    this.at += by;
    this.key = null;
  }

  endGesture(): void {
    this.key = null;
  }

  parts(): Pick<History, 'past' | 'present' | 'future'> {
    const present = this.jobs[this.at];
    if (present === undefined) throw new Error('The finger points at no job');
    return { past: this.jobs.slice(0, this.at), present, future: this.jobs.slice(this.at + 1) };
  }
}

const command = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ kind: fc.constant('edit' as const), key: fc.constantFrom(null, 'rise', 'run') }),
  },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom('undo' as const, 'redo' as const, 'end' as const) }) },
);

test('any sequence does what the row of jobs does', () => {
  fc.assert(
    fc.property(fc.array(command, { maxLength: 60, size: 'max' }), (commands) => {
      const row = new Row(a);
      let history = startHistory(a);
      commands.forEach((each, index) => {
        if (each.kind === 'edit') {
          const job = jobNamed(String(index));
          row.edit(job, each.key);
          history = edit(history, job, each.key);
        } else if (each.kind === 'end') {
          row.endGesture();
          history = endGesture(history);
        } else {
          row.move(each.kind === 'undo' ? -1 : 1);
          history = each.kind === 'undo' ? undo(history) : redo(history);
        }
        const { past, present, future } = history;
        expect({ past, present, future }).toEqual(row.parts());
      });
    }),
    { numRuns: 300 },
  );
});

test('a long session does it too, beyond the bound', () => {
  const row = new Row(a);
  let history = startHistory(a);
  for (let step = 0; step < 3 * MAX_STEPS; step += 1) {
    const job = jobNamed(String(step));
    row.edit(job, null);
    history = edit(history, job, null);
    if (step % 7 === 0) {
      row.move(-1);
      history = undo(history);
    }
  }
  const { past, present, future } = history;
  expect({ past, present, future }).toEqual(row.parts());
});
