/** Files to print, cut and send: which paper, which face, which printer, and a key for each file. */
import { useState } from 'react';
import { PAPER_NAMES, type PaperName } from '../../core/drawing/paper';
import type { Hand } from '../../core/drawing/template';
import type { StairPlan } from '../../core/plan/planStair';
import type { PaperChoice } from '../../export/stairFiles';
import '../../text/latePaper';
import { sayProblem } from '../../text/say';
import { judged } from '../findings/judged';
import { useStair } from '../stairOnShow';
import { useBench } from '../usePlanner';
import { FILE_KINDS, type FileKind, makeFile } from './fileKinds';
import { PrinterPart } from './PrinterPart';
import { usePrinter } from './usePrinter';

const HANDS: readonly Hand[] = ['right', 'left'];

export function FilesPart({ plan }: { readonly plan: StairPlan }) {
  const { say, units } = useStair();
  const [paper, setPaper] = useState<PaperName>(units === 'metric' ? 'a4' : 'letter');
  const [hand, setHand] = useState<Hand>('right');
  const [revision, setRevision] = useState('A');
  const printer = usePrinter(units);
  const choice: PaperChoice = { paper, hand, revision, ...(printer.correction && { correction: printer.correction }) };
  return (
    <section className="sheet files" aria-labelledby="files-title">
      <h2 id="files-title">{say('print.files')}</h2>
      <p>{say('print.files.lead')}</p>
      <div className="file-choices">
        <label>
          <span>{say('print.paper')}</span>
          <select value={paper} onChange={(event) => setPaper(event.currentTarget.value as PaperName)}>
            {PAPER_NAMES.map((name) => (
              <option key={name} value={name}>
                {say(`print.paper.${name}`)}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{say('print.hand')}</span>
          <select value={hand} onChange={(event) => setHand(event.currentTarget.value as Hand)}>
            {HANDS.map((each) => (
              <option key={each} value={each}>
                {say(`print.hand.${each}`)}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{say('print.revision')}</span>
          <input
            type="text"
            value={revision}
            maxLength={24}
            autoComplete="off"
            onChange={(event) => setRevision(event.currentTarget.value)}
          />
        </label>
      </div>
      <FileKeys plan={plan} choice={choice} />
      <PrinterPart printer={printer} />
    </section>
  );
}

interface FileKeysProps {
  readonly plan: StairPlan;
  readonly choice: PaperChoice;
}

function FileKeys({ plan, choice }: FileKeysProps) {
  const { say, job, units } = useStair();
  const { files } = useBench();
  const [making, setMaking] = useState<FileKind | null>(null);
  const [outcome, setOutcome] = useState('');

  async function make(kind: FileKind): Promise<void> {
    setMaking(kind);
    setOutcome('');
    try {
      const made = await makeFile(kind, { job, plan: judged(plan), say }, choice);
      if (!made.ok) {
        setOutcome(
          say('print.refused', { why: made.problems.map((found) => sayProblem(say, found, units)).join(' ') }),
        );
        return;
      }
      const { name, content, type } = made.value;
      const saved = await files.saveFile(name, new Uint8Array(content), type);
      if (saved.kind === 'saved') setOutcome(say('print.made', { name: saved.name }));
      if (saved.kind === 'failed') setOutcome(say('print.failed'));
    } catch {
      setOutcome(say('print.failed'));
    } finally {
      setMaking(null);
    }
  }

  return (
    <>
      <ul className="file-keys">
        {FILE_KINDS.map((kind) => (
          <li key={kind}>
            <button type="button" disabled={making !== null} onClick={() => void make(kind)}>
              <b>{say(`print.file.${kind}`)}</b>
              <small>{making === kind ? say('print.making') : say(`print.file.${kind}.what`)}</small>
            </button>
          </li>
        ))}
      </ul>
      <p aria-live="polite" className="file-outcome">
        {outcome}
      </p>
    </>
  );
}
