/** Choose: the neighbouring layouts side by side, and what the steps are made of. */
import type { StairPlan } from '../../core/plan/planStair';
import { ChooseScreen } from '../choose/ChooseScreen';
import { RiseSheet } from '../results/SumSheets';
import { useWords } from '../stairOnShow';
import { FieldsOf } from './FieldsOf';

export function ChooseStep({ plan }: { readonly plan: StairPlan }) {
  const { say } = useWords();
  return (
    <>
      <ChooseScreen />
      <FieldsOf part="steps" title={say('part.steps')} />
      <RiseSheet plan={plan} />
    </>
  );
}
