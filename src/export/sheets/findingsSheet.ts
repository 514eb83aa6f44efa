/** Every answer with its figures and its section: what breaks first, then what is close and what nobody checked. */
import { type Finding, sortByDanger } from '../../core/codes/findings';
import { type PageSketch, PRINT } from '../../core/drawing/pageSketch';
import { toMm } from '../../core/units/exact';
import { exactText } from '../../core/units/exactText';
import {
  actualText,
  limitWords,
  marginWords,
  measuredWords,
  replacedWords,
  ruleWords,
  sourceWords,
} from '../../text/findingText';
import { plainText } from '../plainText';
import type { LeafContext, LeafMaker } from './leaf';
import { listLeaves } from './listLeaves';
import { type CellText, SMALL, words } from './table';

const ORDER: readonly Finding['status'][] = ['breaks', 'close', 'not-checked', 'meets'];

export const makeFindings: LeafMaker = (context) => {
  const { say, content, plan } = context;
  const width = content.right - content.left;
  const { pack, packId } = plan.rules;
  const sorted = sortByDanger(plan.findings.filter(({ kind }) => kind !== 'taste'));
  const ordered = ORDER.flatMap((status) => sorted.filter((finding) => finding.status === status));
  const list = {
    title: say('sheets.findings'),
    under:
      pack === null
        ? say('findings.noPack', { pack: plainText(packId) })
        : say('findings.by', { pack: `${pack.title}, ${pack.edition}` }),
    columns: [
      { head: say('sheets.answer'), width: width * 0.09 },
      { head: say('sheets.rule'), width: width * 0.35 },
      { head: say('sheets.is'), width: width * 0.07 },
      { head: say('sheets.asked'), width: width * 0.11 },
      { head: say('sheets.margin'), width: width * 0.1 },
      { head: say('sheets.where'), width: width * 0.28 },
    ],
    rows: ordered.map((finding) => rowOf(context, finding)),
    style: SMALL,
  };
  return listLeaves(context, list, (sketch) => drawLead(context, sketch));
};

/** What stands over the first sheet: where the code can be read, and how far the tape was trusted. */
function drawLead({ say, plan, content }: LeafContext, sketch: PageSketch): number {
  const { rules, tapeDoubt, layout } = plan;
  const room = content.right - content.left;
  const addresses = rules.pack?.readAt?.map(({ address }) => address) ?? [];
  const lines = [
    say('findings.authority'),
    ...(addresses.length === 0 ? [] : [say('sheets.readCode', { address: addresses.join(', ') })]),
    ...(tapeDoubt === null || toMm(tapeDoubt) === 0
      ? []
      : [say('sheets.tapeDoubt', { doubt: exactText(tapeDoubt, layout.job.units) })]),
  ];
  const bottom = lines.reduce(
    (y, line) => sketch.paragraph('small', content.left, y, room, line, PRINT.small),
    content.top,
  );
  return bottom - 2;
}

function rowOf({ say, plan }: LeafContext, finding: Finding): CellText[] {
  const { pack } = plan.rules;
  const answer = say(`tag.${finding.status}`);
  const edition = pack === null ? '' : `${pack.title}, ${pack.edition}`;
  const rule = [ruleWords(say, finding.field), measuredWords(say, finding)].filter((each) => each !== '').join('. ');
  const where = [sourceWords(say, finding, edition), replacedWords(say, finding)].filter((each) => each !== '');
  return [
    words(answer, finding.status === 'breaks' || finding.status === 'close'),
    words(plainText(rule)),
    words(actualText(say, finding)),
    words(plainText(limitWords(say, finding))),
    words(marginWords(say, finding)),
    words(plainText(where.join('; '))),
  ];
}
