import { refuse } from './error.js'

/** How long a text may be, in bytes: the core reads no more, and the module's memory never shrinks again. */
export const LONGEST = 16 << 20

/** `text`, unless it is too long to be read. */
export function short(path, text) {
  if (text.length > LONGEST) {
    refuse(
      'document-too-long',
      path,
      `The text is ${text.length} characters long.`,
      `Split it: up to ${LONGEST} bytes are read.`,
    )
  }
  return text
}
