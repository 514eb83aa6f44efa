/** The beam, and each screening figure beside what the data allows. */
import type { Carry, CarryAnswer } from '../../core/carry/screenCarry';
import { beamHeight, drawBeam } from '../../core/drawing/beam';
import type { StairPlan } from '../../core/plan/planStair';
import { answerLine } from '../../text/carryText';
import { Shown } from '../drawing/StairDrawings';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { CarryTag } from './CarryTag';

interface CarryAnswersProps {
  readonly plan: StairPlan;
  readonly carry: Carry;
  readonly isStill: boolean;
}

export function CarryAnswers({ plan, carry, isStill }: CarryAnswersProps) {
  const { say, units } = useStair();
  const { member, gap, answers, steps } = carry;
  const length = (name: string) => lengthText(steps.find((step) => step.name === name)?.result ?? 0, units);
  const alternative = say('carry.drawing.alt', {
    span: length('span'),
    slope: length('slope'),
    throat: lengthText(plan.layout.stringer.throat, units, 'down'),
  });
  return (
    <>
      <h3>{say('carry.answers')}</h3>
      {member !== null && <p className="hint">{say(`carry.member.${member}`)}</p>}
      {gap !== null && <p className="caution">{say(`carry.gap.${gap}`)}</p>}
      <Shown
        plan={plan}
        lit={null}
        draw={drawBeam}
        heightFor={beamHeight}
        alternative={alternative}
        title={say('carry.drawing')}
        isDetail
        isStill={isStill}
      />
      <ul className="finding-list carry-list">
        {answers.map((answer) => (
          <Answer key={answer.check} answer={answer} isSaid={answer.gap === gap} />
        ))}
      </ul>
    </>
  );
}

interface AnswerProps {
  readonly answer: CarryAnswer;
  /** What is missing stands over the list already. */
  readonly isSaid: boolean;
}

function Answer({ answer, isSaid }: AnswerProps) {
  const { say, units } = useStair();
  const line = answerLine(say, answer, units);
  return (
    <li className="finding">
      <CarryTag answer={answer.answer} />
      <div>
        <p className="finding-rule">{say(`carry.check.${answer.check}`)}</p>
        {line !== '' && <p className="finding-figures">{line}</p>}
        {answer.gap !== null && !isSaid && <p className="finding-source">{say(`carry.gap.${answer.gap}`)}</p>}
      </div>
    </li>
  );
}
