/** Where numbers come from. */
export const explainEn = {
  'explain.close': 'Close',
} as const;
