/** An answer as a board's end: the word says it, the shape says it again, the colour comes last. */
import type { TextKey } from '../../text/say';
import { useWords } from '../stairOnShow';

export type Answer = 'breaks' | 'close' | 'unknown' | 'not-checked' | 'meets' | 'inside' | 'outside';

const GLYPHS: Readonly<Record<Answer, string>> = {
  breaks: 'M1 9h4l2-5 3 9 2-4h4',
  close: 'M6 3v11M11 3v11',
  unknown: 'M5 6.5a3.5 3.5 0 1 1 5 3.1c-1 .6-1.5 1.2-1.5 2.2M8.5 14.2v1',
  'not-checked': 'M2 9h3M7 9h3M12 9h3',
  meets: 'M3 9l4 4 7-9',
  inside: 'M3 9l4 4 7-9',
  outside: 'M3 9h10M9 5l4 4-4 4',
};

export function AnswerTag({ answer }: { readonly answer: Answer }) {
  const { say } = useWords();
  const key: TextKey = `tag.${answer}`;
  return (
    <span className={`tag tag-${answer}`}>
      <svg aria-hidden="true" viewBox="0 0 17 17" width="17" height="17">
        <path d={GLYPHS[answer]} />
      </svg>
      {say(key)}
    </span>
  );
}
