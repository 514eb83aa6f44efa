/** Printed sheets and the Print step in the words of the UK trade, where they differ. */
import type { paperEn } from './paper.en';
import type { printEn } from './print.en';

export const paperUk: Partial<Record<keyof typeof paperEn | keyof typeof printEn, string>> = {
  'paper.stringer': 'Whole string, full size',
  'paper.poleStrip': 'Storey rod, full size',
  'paper.headerMark': 'this level below the floor deck of today',

  'sheets.stringer': 'String',
  'sheets.headerMark': 'trimmer mark, under today’s deck',
  'sheets.heights': 'Storey rod and laser',
  'sheets.setOut.header': 'trimmer: string’s top, under today’s deck',
  'sheets.setOut.toe-mark': 'floor: string’s toe, out from the trimmer',
  'sheets.setOut.riser-mark': 'floor: face of riser 1, out from the trimmer',
  'sheets.setOut.nosing-mark': 'floor: nosing 1, out from the trimmer',
  'sheets.setOut.stringer-centre': 'across: middle of string {step}',
  'sheets.setOut.spacer': 'across: face of packer {step}',
  'sheets.piece.stringer': 'string, board to buy',
  'sheets.piece.spacer': 'packer',
  'sheets.piece.skirt': 'wall string',
  'sheets.inspection.under': 'Measure each riser and going; write what you find.',

  'inspect.runPlanned': 'going, planned',
  'inspect.runSpread': 'deepest going less the shallowest',
  'inspect.rail': 'handrail over the pitch line, both ends',
  'inspect.guard': 'balustrade height',
  'inspect.openings': 'gaps in balustrades and between treads',
  'inspect.fixings': 'fixings at trimmer, kicker, walls',

  'caution.1':
    'Tell building control and agree the inspections before the first cut. The edition that it goes by wins over the rules named here.',
  'caution.2':
    'An open well is a hole to fall through: until the real balustrade stands, rail it about 1070 mm high with a rail half way down, or cover it, screw the cover down and mark it as a hole.',
  'caution.4':
    'Nobody works from a string that is not fixed at both ends, or from treads that are not screwed down. Keep a tied ladder until then.',
  'caution.7': 'Turn a board down that has a large knot, a split or wane at a corner, a throat or the trimmer notch.',
  'caution.14':
    'Stop and ask someone who can reckon it when the trimmer covers less than half of the plumb cut, when the throat is under its limit or the span over it, when there is no wall to brace against, when a member is cracked, or when a post is only screwed to a tread.',

  'print.stringerPaper': 'Whole string on',
  'print.hand': 'The string’s face climbs to the',
  'print.file.package.what':
    'survey, elevation, details, string, storey rod, cut list, findings, cautions, inspection form',
  'print.sheet.stringer': 'String',
  'print.sheet.heights': 'Storey rod, laser, set-out',
  'print.file.strips.what': 'running marks and storey rod',
  'print.file.stringer': 'Whole string at full size, PDF',
  'print.file.dxf': 'String, DXF',
  'print.file.svg': 'String in true millimetres, SVG',
};
