/** Which sheets go into the package: all, until somebody leaves one out. */
import { PACKAGE_SHEETS, type PackageSheet } from '../../export/sheets/sheetNames';
import { useStair } from '../stairOnShow';

interface SheetsPartProps {
  readonly chosen: readonly PackageSheet[];
  readonly onChoose: (chosen: readonly PackageSheet[]) => void;
}

export function SheetsPart({ chosen, onChoose }: SheetsPartProps) {
  const { say } = useStair();
  return (
    <details className="printer">
      <summary>{say('print.sheets', { count: chosen.length, all: PACKAGE_SHEETS.length })}</summary>
      <fieldset className="sheet-choices">
        <legend>{say('print.sheets.lead')}</legend>
        {PACKAGE_SHEETS.map((sheet) => (
          <label key={sheet} className="sheet-choice">
            <input
              type="checkbox"
              checked={chosen.includes(sheet)}
              onChange={(event) => {
                const isIn = event.currentTarget.checked;
                onChoose(PACKAGE_SHEETS.filter((one) => (one === sheet ? isIn : chosen.includes(one))));
              }}
            />
            <span>{say(`print.sheet.${sheet}`)}</span>
          </label>
        ))}
      </fieldset>
      {chosen.length === 0 && <p>{say('print.sheets.none')}</p>}
    </details>
  );
}
