import type { Source } from './scalar.js'

export * from './index.js'
export { default } from './index.js'

/**
 * Loads the rest of the library, after `init()`: until then a request of a calculation that no plan needs is refused with the
 * code `not-ready`, and so are plain numbers. Calling it again does nothing.
 */
export function rest(source?: Source): Promise<void>
