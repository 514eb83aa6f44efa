/** The sheets that a package can hold, in their order. Apart from their makers, so that a page can name them without. */
export const PACKAGE_SHEETS = [
  'cover',
  'survey',
  'elevation',
  'details',
  'stringer',
  'heights',
  'cutList',
  'treads',
  'findings',
  'carry',
  'cautions',
  'inspection',
] as const;

export type PackageSheet = (typeof PACKAGE_SHEETS)[number];
