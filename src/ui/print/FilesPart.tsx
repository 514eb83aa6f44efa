/** Files to print, cut and send: which paper, which face, which printer, and a key for each file. */
import { useState } from 'react';
import { PAPER_NAMES, type PaperName } from '../../core/drawing/paper';
import type { Hand } from '../../core/drawing/template';
import { PACKAGE_SHEETS, type PackageSheet } from '../../export/sheets/sheetNames';
import type { PaperChoice } from '../../export/stairFiles';
import '../../text/latePaper';
import { sayProblem } from '../../text/say';
import { FILE_KINDS, type FileKind } from '../../workshop/order';
import { orderFile } from '../../workshop/workshop';
import { useStair } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';
import { PrinterPart } from './PrinterPart';
import { SheetsPart } from './SheetsPart';
import { usePrinter } from './usePrinter';

const HANDS: readonly Hand[] = ['right', 'left'];

export function FilesPart() {
  const { say, units } = useStair();
  const [paper, setPaper] = useState<PaperName>(units === 'metric' ? 'a4' : 'letter');
  const [stringerPaper, setStringerPaper] = useState<PaperName>('roll36');
  const [hand, setHand] = useState<Hand>('right');
  const [revision, setRevision] = useState('A');
  const [sheets, setSheets] = useState<readonly PackageSheet[]>(PACKAGE_SHEETS);
  const printer = usePrinter(units);
  const choice: PaperChoice = {
    paper,
    stringerPaper,
    hand,
    revision,
    ...(printer.correction && { correction: printer.correction }),
  };
  return (
    <section className="sheet files" aria-labelledby="files-title">
      <h2 id="files-title">{say('print.files')}</h2>
      <p>{say('print.files.lead')}</p>
      <div className="file-choices">
        <PaperField label={say('print.paper')} paper={paper} onChoose={setPaper} />
        <PaperField label={say('print.stringerPaper')} paper={stringerPaper} onChoose={setStringerPaper} />
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
        {printer.known.length > 0 && (
          <label>
            <span>{say('print.printer.which')}</span>
            <select value={printer.chosen} onChange={(event) => printer.choose(event.currentTarget.value)}>
              <option value="">{say('print.printer.noneChosen')}</option>
              {printer.known.map(({ name }) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        )}
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
      <FileKeys choice={choice} sheets={sheets} />
      <SheetsPart chosen={sheets} onChoose={setSheets} />
      <PrinterPart printer={printer} />
    </section>
  );
}

interface PaperFieldProps {
  readonly label: string;
  readonly paper: PaperName;
  readonly onChoose: (paper: PaperName) => void;
}

function PaperField({ label, paper, onChoose }: PaperFieldProps) {
  const { say } = useStair();
  return (
    <label>
      <span>{label}</span>
      <select value={paper} onChange={(event) => onChoose(event.currentTarget.value as PaperName)}>
        {PAPER_NAMES.map((name) => (
          <option key={name} value={name}>
            {say(`print.paper.${name}`)}
          </option>
        ))}
      </select>
    </label>
  );
}

interface FileKeysProps {
  readonly choice: PaperChoice;
  readonly sheets: readonly PackageSheet[];
}

function FileKeys({ choice, sheets }: FileKeysProps) {
  const { say, job, index, units } = useStair();
  const terms = usePlannerState((state) => state.terms);
  const { files } = useBench();
  const [making, setMaking] = useState<FileKind | null>(null);
  const [outcome, setOutcome] = useState('');

  async function make(kind: FileKind): Promise<void> {
    setMaking(kind);
    setOutcome('');
    try {
      const made = await orderFile({ kind, job, stair: index, terms, choice, sheets });
      if (!made.ok) {
        setOutcome(
          say('print.refused', { why: made.problems.map((found) => sayProblem(say, found, units)).join(' ') }),
        );
        return;
      }
      const { name, content, type } = made.value;
      const saved = await files.saveFile(name, new Uint8Array(content), type);
      setOutcome(saved.kind === 'saved' ? say('print.made', { name: saved.name }) : say(`print.${saved.kind}`));
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
            <button
              type="button"
              disabled={making !== null || (kind === 'package' && sheets.length === 0)}
              onClick={() => void make(kind)}
            >
              <b>{say(`print.file.${kind}`)}</b>
              <small>{say(`print.file.${kind}.what`)}</small>
            </button>
          </li>
        ))}
      </ul>
      <p aria-live="polite" className="file-outcome">
        {making === null ? outcome : say('print.making')}
      </p>
    </>
  );
}
