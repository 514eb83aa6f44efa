/** A stair with an unknown finish is a draft, and says so before anything that could be cut from. */
import type { StairPlan } from '../../core/plan/planStair';
import { idOf, labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { AnswerTag } from '../findings/AnswerTag';
import { useWords } from '../stairOnShow';
import { useGoToPlace } from '../steps/goToPlace';

export function DraftBanner({ plan }: { readonly plan: StairPlan }) {
  const { say, index } = useWords();
  const goTo = useGoToPlace();
  const { draft, job } = plan.layout;
  if (!draft) return null;
  return (
    <section className="draft-banner" aria-label={say('draftBanner.title')}>
      <AnswerTag answer="unknown" />
      <p>
        <b>{say('draftBanner.title')}.</b> {say('draftBanner.lead', { count: job.unknowns.length })}{' '}
        {job.unknowns.map((key, at) => {
          const place = placeInStair(index, key);
          return (
            <span key={key}>
              {at > 0 && ', '}
              <a
                href={`#${idOf(place)}`}
                onClick={(event) => {
                  event.preventDefault();
                  goTo(place);
                }}
              >
                {labelOf(say, place)}
              </a>
            </span>
          );
        })}
      </p>
    </section>
  );
}
