import { refuse } from './error.js'

/** Longest text that is handed over: the core reads no more, and the module's memory never shrinks again. */
const LONGEST = 16 << 20

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
