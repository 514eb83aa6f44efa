/** What the page says. US trade terms; `ukTerms` replaces what the UK trade calls otherwise. */
export const screenEn = {
  'app.name': 'Pitchboard',
} as const;
