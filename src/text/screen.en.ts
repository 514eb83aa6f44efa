/** What the page says. US trade terms; `ukTerms` replaces what the UK trade calls otherwise. */

import { chooseEn } from './choose.en';
import { explainEn } from './explain.en';
import { fieldsEn } from './fields.en';
import { findingsEn } from './findings.en';
import { keypadEn } from './keypad.en';
import { measureEn } from './measure.en';
import { printEn } from './print.en';
import { resultsEn } from './results.en';
import { sightEn } from './sight.en';
import { stepsEn } from './steps.en';
import { walkEn } from './walk.en';

export const screenEn = {
  ...explainEn,
  ...fieldsEn,
  ...findingsEn,
  ...keypadEn,
  ...measureEn,
  ...printEn,
  ...resultsEn,
  ...chooseEn,
  ...walkEn,
  ...sightEn,
  ...stepsEn,

  'app.name': 'Pitchboard',
  'app.noJobName': 'Job without a name',
  'app.example':
    'An example with invented figures, so that there is something to look at. Type over it, or open a job.',
  'app.skip': 'Skip to the fields',
  'app.dropHere': 'Let go to open this job file',

  'bar.undo': 'Undo',
  'bar.redo': 'Redo',
  'bar.open': 'Open',
  'bar.save': 'Save',
  'bar.stair': 'Stair',
  'bar.theme': 'Light',
  'bar.terms': 'Trade words',
  'bar.units': 'Units',
  'theme.paper': 'Paper',
  'theme.sun': 'Sun',
  'theme.dim': 'Dim',
  'terms.us': 'US',
  'terms.uk': 'UK',
  'bar.units.imperial': 'Inches',
  'bar.units.metric': 'mm',
  'units.imperial': 'Feet and inches',
  'units.metric': 'Millimetres',

  'draft.loading': 'Looking for a draft on this device',
  'draft.none': 'Nothing to keep yet',
  'draft.writing': 'Being written to this device',
  'draft.kept': 'Draft kept on this device at {time}',
  'draft.failed': 'NOT kept on this device: {reason}.',
  'draft.reason.quota': 'it has no room left',
  'draft.reason.unavailable': 'the browser’s storage cannot be reached',
  'draft.reason.unknown': 'the browser refused, without a reason',
  'draft.reason.other-draft': 'another window has written its own draft since',
  'draft.reason.newer-version': 'a newer Pitchboard has been here; load this page again',
  'draft.reason.unreadable': 'the draft that was found cannot be read and is left alone',
  'draft.takeOver': 'Keep the job of this window',
  'draft.saveNow': 'Save to a file',
  'draft.loss.older-draft': 'The newest draft could not be read. This is the one before it: look it over.',
  'draft.loss.undo-steps': 'Some of the older undo steps could not be read.',

  'offline.is.cannot':
    'This browser does not keep the page, or it came over a way that is not secure: without a network it will not open again.',
  'offline.is.fetching': 'Being kept on this device, to open without a network.',
  'offline.is.kept': 'Kept on this device: it opens without a network.',
  'offline.is.failed':
    'Not kept on this device yet: without a network it will not open. It is tried again the next time.',
  'offline.is.newer': 'Kept on this device: it opens without a network. A newer version waits.',
  'offline.newer':
    'A newer Pitchboard is on this device. It begins when this one has been closed and is opened again, or now. The job stays.',
  'offline.begin': 'Begin with it now',

  'file.never-saved-to-file': 'not in a file yet',
  'file.changed-since-file': 'changed since {name}',
  'file.same-as-file': 'same as {name}',
  'file.aFile': 'the file',
  'file.opened': '{name} is open. Undo brings the job before it back.',
  'file.saved': 'Saved as {name}.',
  'file.saveFailed': 'The file was not written. The job is still here: try another place.',
  'file.openFailed': '“{name}” could not be read from the device.',
  'file.tooLarge': '“{name}” is larger than a job file can be.',
  'file.several': 'Several files were dropped. Drop one.',
  'refused.title': '“{name}” was not opened',
  'refused.lead':
    'The open job is as it was. {count, plural, one {This is in the way:} other {These # things are in the way:}}',
  'refused.close': 'Back to the open job',

  'drawing.totalRise': 'total rise, finished',
  'drawing.riseToday': 'rise today, as taped',
  'drawing.headroom': 'headroom, tightest',
  'drawing.headroomShort': 'headroom',
  'drawing.opening': 'opening, framed',
  'drawing.totalRun': 'total run, riser to riser',
  'drawing.headerToRiser': 'riser 1 face to the header',
  'drawing.floorToCome': 'floor to come',
  'drawing.notKnown': 'not known yet',
  'drawing.gaugeLine': 'gauge line, in from the edge',
  'drawing.unitRise': 'unit rise',
  'drawing.firstCut': 'first cut',
  'drawing.belowSubfloor': 'below the subfloor today',
  'drawing.headerContact': 'bears on the header',
  'drawing.plumbCut': 'plumb cut',
  'drawing.notchDepth': 'notch depth',
  'drawing.stepLength': 'tip to tip',
  'drawing.elevation': 'Side elevation',
  'drawing.elevation.alt':
    'Side elevation: {risers, plural, one {# riser} other {# risers}} of {rise}, run {run}, pitch {pitch}°, total rise {total}. The figures stand in the tables below.',
  'drawing.board': 'The stringer on its board',
  'drawing.board.alt':
    'Stringer laid out on a board {depth} deep: {tips, plural, one {# tip} other {# tips}} along the edge, first at {first}, last at {last} from the board’s end. The marks table lists them all.',
  'drawing.none': 'Nothing can be drawn yet.',
  'drawing.heel': 'The toe, enlarged',
  'drawing.heel.alt': 'The toe of the stringer on the floor: first cut {cut}, unit rise {rise}.',
  'drawing.topEnd': 'The top end, enlarged',
  'drawing.topEnd.alt':
    'The stringer at the header: its last level cut {mark} below the subfloor as it is today, plumb cut {plumb}.',
  'drawing.step': 'One notch, enlarged',
  'drawing.step.alt': 'One notch on the board: rise {rise}, run {run}, notch depth {notch}.',
} as const;
