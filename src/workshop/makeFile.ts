/**
 * An order → its file. The stair is planned anew from the job's text, so that nothing but text crosses
 * from the page, and the file is made from the very job that is shown.
 */
import { planStair } from '../core/plan/planStair';
import * as files from '../export/stairFiles';
import { loadLumber } from '../packs/lumber/lumber';
import { BOOK, DEFAULT_PACK, loadPack } from '../packs/ruleBook';
import '../text/lateCarry';
import '../text/lateUk';
import { speakerFor } from '../text/say';
import type { Answer, Order } from './order';
import { pngOf } from './picture';

export async function makeFile({ kind, job, stair, terms, choice, sheets }: Order): Promise<Answer> {
  // A pack that is not known leaves its rules unchecked, and the sheets say so.
  await loadPack(job.rules?.pack ?? DEFAULT_PACK);
  const plan = planStair(job, stair, BOOK, 'usual');
  if (!plan.ok) return plan;
  const source = { job, plan: plan.value, say: speakerFor(terms) };
  switch (kind) {
    case 'package':
      return files.packageFile(source, { ...choice, sheets, lumber: await loadLumber() });
    case 'templates':
      return files.patternsFile(source, choice);
    case 'strips':
      return files.stripsFile(source, choice);
    case 'stringer':
      return files.wholeStringerFile(source, choice);
    case 'dxf':
      return files.dxfFile(source, choice);
    case 'templatesDxf':
      return files.templatesDxfFile(source, choice);
    case 'elevationDxf':
      return files.elevationDxfFile(source, choice);
    case 'svg':
      return files.stringerSvgFile(source, choice);
    case 'cutList':
      return files.cutListFile(source, choice);
    case 'marks':
      return files.marksFile(source, choice);
    case 'picture':
      return files.pictureFile(source, choice, pngOf);
  }
}
