/** What the page asks its workshop for, and what it gets back: plain data, since it goes from one thread to the other. */
import type { JobText } from '../core/job/jobText';
import type { Result } from '../core/result';
import type { PackageSheet } from '../export/sheets/sheetNames';
import type { ExportedFile, PaperChoice } from '../export/stairFiles';
import type { Terms } from '../text/say';

export const FILE_KINDS = [
  'package',
  'templates',
  'strips',
  'stringer',
  'dxf',
  'templatesDxf',
  'elevationDxf',
  'svg',
  'picture',
  'cutList',
  'marks',
] as const;
export type FileKind = (typeof FILE_KINDS)[number];

export interface Order {
  readonly kind: FileKind;
  readonly job: JobText;
  /** Which of its stairs, from 0. */
  readonly stair: number;
  readonly terms: Terms;
  readonly choice: PaperChoice;
  /** Of the package. */
  readonly sheets: readonly PackageSheet[];
}

export type Answer = Result<ExportedFile>;
