/** One finding: its answer, the rule, where it is on the stair, the figures, the source; and, where there is trouble, what helps. */
import { lazy, type MouseEvent, Suspense } from 'react';
import { dangerOf, type Finding } from '../../core/codes/findings';
import {
  actualWords,
  limitWords,
  marginWords,
  measuredWords,
  replacedWords,
  ruleWords,
  sourceWords,
} from '../../text/findingText';
import { isTextKey, type Speaker } from '../../text/say';
import { labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { useStair } from '../stairOnShow';
import { type Answer, AnswerTag } from './AnswerTag';
import { CodeAddress } from './CodeAddress';
import { isTrouble, placeOf } from './ofFinding';

const FindingCures = lazy(() => import('./FindingCures').then(({ FindingCures }) => ({ default: FindingCures })));

interface FindingProps {
  readonly finding: Finding;
}

export function FindingRow({ finding }: FindingProps) {
  const { say } = useStair();
  const place = placeOf(finding.field);
  const where = whereWords(say, place);
  const figures = [actualWords(say, finding), limitWords(say, finding), marginWords(say, finding)];
  const danger = finding.kind === 'taste' ? '' : say(`danger.${dangerOf(finding)}`);
  return (
    <li className={`finding finding-${finding.status}`} data-key={place ?? undefined}>
      <AnswerTag answer={answerOf(finding)} />
      <div>
        <p className="finding-rule">
          {where === '' ? (
            ruleWords(say, finding.field)
          ) : (
            // Where a drawing shows it, the name is a key that lights it up there.
            <button type="button" className="finding-show" onClick={showInDrawing} title={say('where.show', { where })}>
              {ruleWords(say, finding.field)}
            </button>
          )}
        </p>
        <p className="finding-figures">{figures.filter((words) => words !== '').join(', ')}</p>
        <p className="finding-more">
          <span>{sentence([danger, where].filter((words) => words !== '').join(', '))}</span>{' '}
          <span>{measuredWords(say, finding)}</span> <Source finding={finding} />
        </p>
      </div>
      {isTrouble(finding) && <Help finding={finding} />}
    </li>
  );
}

function whereWords(say: Speaker, place: string | null): string {
  const key = `where.${place ?? ''}`;
  return isTextKey(key) ? say(key) : '';
}

function sentence(words: string): string {
  return words === '' ? '' : `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

function Source({ finding }: FindingProps) {
  const { say, plan } = useStair();
  const pack = plan.ok ? plan.value.rules.pack : null;
  const byPack = pack === null ? '' : `${pack.title}, ${pack.edition}`;
  const isOfPack = finding.source === byPack;
  // Where there is trouble the code is named in full; elsewhere its name stands over the list, and its edition here.
  const known = isTrouble(finding) ? '' : byPack;
  const edition = isOfPack && !isTrouble(finding) && pack !== null ? `${pack.edition}, ` : '';
  const replaced = replacedWords(say, finding);
  return (
    <span>
      {edition}
      {sourceWords(say, finding, known)}
      {replaced !== '' && `; ${replaced}`}
    </span>
  );
}

/** Which reading to take again, what would clear it, and where the rule can be read. */
function Help({ finding }: FindingProps) {
  const { say, plan, index } = useStair();
  const [first] = (plan.ok ? plan.value.rules.pack?.readAt : undefined) ?? [];
  return (
    <div className="finding-help">
      {finding.status === 'close' && finding.readAgain.length > 0 && (
        <p className="finding-again">
          {say('finding.readAgain', {
            places: finding.readAgain.map((key) => labelOf(say, placeInStair(index, key))).join(', '),
          })}
        </p>
      )}
      <Suspense fallback={null}>
        <FindingCures finding={finding} />
      </Suspense>
      {first !== undefined && finding.section !== '' && (
        <p className="finding-more">
          {say('findings.readCode')} <CodeAddress address={first.address} about={ruleWords(say, finding.field)} />
        </p>
      )}
    </div>
  );
}

/** The focus lights it up; where the drawing has been left behind, it is brought back into sight. */
function showInDrawing({ currentTarget }: MouseEvent<HTMLButtonElement>): void {
  currentTarget.focus({ preventScroll: true });
  const drawing = document.querySelector('.desk-drawing .elevation');
  const box = drawing?.getBoundingClientRect();
  if (box !== undefined && (box.bottom < box.height / 2 || box.top > window.innerHeight - box.height / 2)) {
    drawing?.scrollIntoView({ block: 'start' });
  }
}

/** A proportion of the trade is never "broken". */
function answerOf({ kind, status }: Finding): Answer {
  if (kind !== 'taste') return status;
  return status === 'meets' ? 'inside' : 'outside';
}
