/** Why a file was not opened, all of it at once. It takes the focus and gives it back. */
import { useEffect, useRef } from 'react';
import { sayProblem } from '../../text/say';
import { useWords } from '../stairOnShow';
import type { Refusal } from './jobFile';

interface RefusedFileProps {
  readonly refusal: Refusal;
  readonly onClose: () => void;
}

export function RefusedFile({ refusal, onClose }: RefusedFileProps) {
  const { say, units } = useWords();
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    panel.current?.focus();
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === 'Escape') onClose();
    };
    document.addEventListener('keydown', onKeyDown);
    return () => {
      document.removeEventListener('keydown', onKeyDown);
      if (before instanceof HTMLElement) before.focus();
    };
  }, [onClose]);
  return (
    <div
      className="refused-file"
      role="alertdialog"
      aria-labelledby="refused-title"
      aria-describedby="refused-lead"
      tabIndex={-1}
      ref={panel}
    >
      <h2 id="refused-title">{say('refused.title', { name: refusal.name })}</h2>
      <p id="refused-lead">{say('refused.lead', { count: refusal.problems.length })}</p>
      <ul>
        {refusal.problems.map((found) => (
          <li key={`${found.place} ${found.code}`}>
            <code>{found.place}</code> {sayProblem(say, found, units)}
          </li>
        ))}
      </ul>
      <button type="button" onClick={onClose}>
        {say('refused.close')}
      </button>
    </div>
  );
}
