/** The stairs of the job: which one is on show, and the list itself. Every change is one step of undo. */
import { useEffect, useRef } from 'react';
import type { JobText } from '../../core/job/jobText';
import { addStair, duplicateStair, moveStair, removeStair, renameStair } from '../../state/stairs';
import { lengthText } from '../numbers/figures';
import { planOf, unitsOf, useStair } from '../stairOnShow';
import { useBench } from '../usePlanner';

export function StairsDialog({ onClose }: { readonly onClose: () => void }) {
  const { say, job } = useStair();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  const close = () => {
    dialog.current?.close();
    onClose();
  };
  return (
    <dialog ref={dialog} className="stairs-dialog" aria-labelledby="stairs-title" onClose={onClose}>
      <h2 id="stairs-title">{say('stairs.title')}</h2>
      {job.name !== undefined && <p className="job-name">{job.name}</p>}
      <ol>
        {job.stairs.map((stair, at) => (
          <StairRow key={stair.id} at={at} onShow={close} />
        ))}
      </ol>
      <AddStair />
      <p className="hint">{say('stairs.undo')}</p>
      <button type="button" className="main-button" onClick={close}>
        {say('stairs.close')}
      </button>
    </dialog>
  );
}

function AddStair() {
  const { say, job } = useStair();
  const { actions } = useBench().planner;
  return (
    <button
      type="button"
      onClick={() => {
        actions.edit((present) => addStair(present, say('stairs.newName')), null);
        actions.selectStair(job.stairs.length);
      }}
    >
      {say('stairs.add')}
    </button>
  );
}

function StairRow({ at, onShow }: { readonly at: number; readonly onShow: () => void }) {
  const { say, job, index } = useStair();
  const { typing, planner } = useBench();
  const { actions } = planner;
  const stair = job.stairs[at];
  if (stair === undefined) return null;
  const name = stair.name ?? stair.id;
  const edit = (change: (present: JobText) => JobText) => actions.edit(change, null);
  /** The stair on show stays the same one, wherever it has moved to. */
  const move = (by: -1 | 1) => {
    typing.moveStairs((each) => (each === at ? at + by : each === at + by ? at : each));
    edit((present) => moveStair(present, at, by));
    if (index === at) actions.selectStair(at + by);
    else if (index === at + by) actions.selectStair(at);
  };
  return (
    <li aria-current={at === index ? 'true' : undefined}>
      <input
        type="text"
        aria-label={say('stairs.name', { number: at + 1 })}
        value={name}
        maxLength={200}
        onChange={(event) => {
          const typed = event.currentTarget.value;
          actions.edit((present) => renameStair(present, at, typed), `stairs[${at}].name`);
        }}
        onBlur={actions.endGesture}
      />
      <p className="hint">{summaryOf(say, job, at)}</p>
      <div className="stair-ways">
        <button
          type="button"
          disabled={at === index}
          onClick={() => {
            actions.selectStair(at);
            onShow();
          }}
        >
          {say(at === index ? 'stairs.shown' : 'stairs.show')}
        </button>
        <button type="button" aria-label={say('stairs.up', { name })} disabled={at === 0} onClick={() => move(-1)}>
          ↑
        </button>
        <button
          type="button"
          aria-label={say('stairs.down', { name })}
          disabled={at === job.stairs.length - 1}
          onClick={() => move(1)}
        >
          ↓
        </button>
        <button
          type="button"
          onClick={() => {
            typing.moveStairs((each) => (each > at ? each + 1 : each));
            edit((present) => duplicateStair(present, at, say('stairs.copyName', { name })));
          }}
        >
          {say('stairs.copy', { name })}
        </button>
        <button
          type="button"
          disabled={job.stairs.length < 2}
          onClick={() => {
            typing.moveStairs((each) => (each === at ? null : each > at ? each - 1 : each));
            edit((present) => removeStair(present, at));
          }}
        >
          {say('stairs.remove', { name })}
        </button>
      </div>
    </li>
  );
}

function summaryOf(say: ReturnType<typeof useStair>['say'], job: JobText, at: number): string {
  const plan = planOf(job, at);
  if (!plan.ok) return say('stairs.notLaidOut');
  const { risers, unitRise, run } = plan.value.layout.flight;
  const units = unitsOf(job);
  return say('stairs.summary', { risers, rise: lengthText(unitRise, units), run: lengthText(run, units) });
}
