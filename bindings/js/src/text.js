import { refuse } from './error.js'

/** The maximum length of a text in bytes: the core reads no more, and the module's memory never shrinks. */
export const LONGEST = 16 << 20

/** `text`, checked to be short enough. */
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
