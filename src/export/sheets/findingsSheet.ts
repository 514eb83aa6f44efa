/** Every answer with its figures and its section: what breaks first, what was not checked last. */
import { type Finding, sortByDanger } from '../../core/codes/findings';
import { findingText } from '../../text/findingText';
import { plainText } from '../plainText';
import type { LeafContext, LeafMaker } from './leaf';
import { listLeaves } from './listLeaves';
import { type CellText, SMALL, words } from './table';

const ORDER: readonly Finding['status'][] = ['breaks', 'close', 'meets', 'not-checked'];

export const makeFindings: LeafMaker = (context) => {
  const { say, content, plan } = context;
  const width = content.right - content.left;
  const { pack, packId } = plan.rules;
  const sorted = sortByDanger(plan.findings.filter(({ kind }) => kind !== 'taste'));
  const ordered = ORDER.flatMap((status) => sorted.filter((finding) => finding.status === status));
  return listLeaves(context, {
    title: say('sheets.findings'),
    under:
      pack === null
        ? say('findings.noPack', { pack: plainText(packId) })
        : say('findings.by', { pack: `${pack.title}, ${pack.edition}` }),
    columns: [
      { head: say('sheets.answer'), width: width * 0.11 },
      { head: say('sheets.rule'), width: width * 0.36 },
      { head: say('sheets.is'), width: width * 0.1 },
      { head: say('sheets.asked'), width: width * 0.14 },
      { head: say('sheets.where'), width: width * 0.29 },
    ],
    rows: ordered.map((finding) => rowOf(context, finding)),
    style: SMALL,
  });
};

function rowOf({ say }: LeafContext, finding: Finding): CellText[] {
  const { rule, actual, limit, source } = findingText(say, finding);
  const answer = say(`tag.${finding.status}`);
  return [
    words(answer, finding.status === 'breaks' || finding.status === 'close'),
    words(plainText(rule)),
    words(actual),
    words(plainText(limit)),
    words(plainText(source)),
  ];
}
