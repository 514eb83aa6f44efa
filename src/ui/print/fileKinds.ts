/** The files that a stair can leave as, each by the call that makes it. */
import type { Result } from '../../core/result';
import type { ExportedFile, PaperChoice, StairSource } from '../../export/stairFiles';

export const FILE_KINDS = ['package', 'templates', 'strips', 'stringer', 'dxf', 'svg', 'cutList', 'marks'] as const;
export type FileKind = (typeof FILE_KINDS)[number];

/** The writers of files are large: they come when the first file is asked for. */
export async function makeFile(
  kind: FileKind,
  source: StairSource,
  choice: PaperChoice,
): Promise<Result<ExportedFile>> {
  const files = await import('../../export/stairFiles');
  switch (kind) {
    case 'package': {
      const { PACKAGE_SHEETS } = await import('../../export/sheets/packagePages');
      const { loadLumber } = await import('../../packs/lumber/lumber');
      return files.packageFile(source, { ...choice, sheets: PACKAGE_SHEETS, lumber: await loadLumber() });
    }
    case 'templates':
      return files.templatesFile(source, { ...choice, templates: ['triangle', 'heel', 'topEnd'], what: 'templates' });
    case 'strips':
      return files.templatesFile(source, { ...choice, templates: ['marksStrip', 'poleStrip'], what: 'strips' });
    case 'stringer':
      return files.templatesFile(source, { ...choice, templates: ['stringer'], what: 'stringer' });
    case 'dxf':
      return files.dxfFile(source, choice);
    case 'svg':
      return files.stringerSvgFile(source, choice);
    case 'cutList':
      return files.cutListFile(source, choice);
    case 'marks':
      return files.marksFile(source, choice);
  }
}
