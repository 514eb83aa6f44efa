/** Every step of the screening: what it is, the sum in symbols and in figures, and where each part comes from. */
import type { ReactNode } from 'react';
import type { Carry } from '../../core/carry/screenCarry';
import type { CarryOrigin, CarryStep } from '../../core/carry/working';
import { carrySum, carryValue, carryWhence, stepTitle, symbolOf } from '../../text/carryText';
import '../../text/lateFigures';
import { Explained } from '../explain/Explained';
import { useStair } from '../stairOnShow';

export function CarryWorking({ carry }: { readonly carry: Carry }) {
  const { say } = useStair();
  return (
    <details className="carry-working">
      <summary>{say('carry.working')}</summary>
      <ol>
        {carry.steps.map((step) => (
          <Step key={step.name} step={step} />
        ))}
      </ol>
    </details>
  );
}

function Step({ step }: { readonly step: CarryStep }) {
  const { say, units } = useStair();
  return (
    <li>
      <h4>{stepTitle(say, step)}</h4>
      <p className="explain-because">{say(`carry.because.${step.name}`)}</p>
      <p className="explain-sum">{carrySum(say, step, units, 'symbols')}</p>
      <p className="explain-sum">
        = {carrySum(say, step, units, 'figures')} = <b>{carryValue(step.result, step.unit, units)}</b>
      </p>
      <dl className="carry-terms">
        {step.terms.map(({ symbol, value, unit, origin }) => (
          <div key={symbol}>
            <dt>
              <Asked origin={origin}>
                {symbolOf(symbol)} = {carryValue(value, unit, units)}
              </Asked>
            </dt>
            <dd>{carryWhence(say, origin)}</dd>
          </div>
        ))}
      </dl>
    </li>
  );
}

/** A number of the layout leads on to its own sum. */
function Asked({ origin, children }: { readonly origin: CarryOrigin; readonly children: ReactNode }) {
  if (origin.from !== 'measure') return children;
  return (
    <Explained measure={origin.measure}>
      <span className="carry-asked">{children}</span>
    </Explained>
  );
}
