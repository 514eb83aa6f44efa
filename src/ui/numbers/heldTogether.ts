/** Between a whole number, its fraction and its unit no line may break: `7` and then `9/16 in` are two lengths. */
const INSIDE_LENGTH = /\d (?=\d+\/\d|\+? ?(in|mm|ft)\b)|\+ (?=in\b)/g;

/** A text whose lengths keep on one line; its words may still part. */
export function heldTogether(text: string): string {
  return text.replace(INSIDE_LENGTH, (start) => `${start[0]}\u00a0`);
}
