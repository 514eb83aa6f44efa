/** A screening answer as a board's end. It borrows no sign of a rule that is met: within a figure is no more than that. */
import type { PublishedAnswer } from '../../core/carry/published';
import { useStair } from '../stairOnShow';

type Answer = PublishedAnswer['answer'];

const LOOKS: Readonly<Record<Answer, { readonly tag: string; readonly path: string }>> = {
  within: { tag: 'inside', path: 'M2 13h13M8.5 3v7M5.5 7l3 3 3-3' },
  exceeds: { tag: 'breaks', path: 'M2 4h13M8.5 14V7M5.5 10l3-3 3 3' },
  short: { tag: 'breaks', path: 'M2 4h13M8.5 14V8M6 14h5' },
  'not-in-data': { tag: 'not-checked', path: 'M2 9h3M7 9h3M12 9h3' },
};

export function CarryTag({ answer }: { readonly answer: Answer }) {
  const { say } = useStair();
  const { tag, path } = LOOKS[answer];
  return (
    <span className={`tag tag-${tag}`}>
      <svg aria-hidden="true" viewBox="0 0 17 17" width="17" height="17">
        <path d={path} />
      </svg>
      {say(`carry.tag.${answer}`)}
    </span>
  );
}
