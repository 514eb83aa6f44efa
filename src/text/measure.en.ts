/** Measuring, one thing at a time. */
export const measureEn = {} as const;
