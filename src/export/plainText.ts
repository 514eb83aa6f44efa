/**
 * What a user wrote, made fit for a file: one line, without anything that steers a reader or turns
 * the direction of the text. Every writer of files passes names through here first.
 */

/** C0 and C1 controls, line and paragraph separators, and what is nothing but an instruction to a text engine. */
const STEERING = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\u2028\u2029]+/gu;

export function plainText(text: string): string {
  return text.normalize('NFC').replace(STEERING, ' ').replace(/\s+/gu, ' ').trim();
}
