// Dates and numbers as a locale writes them. What writes them takes the browser a millisecond to make, so that it is kept.

const held = new Map()

function kept(kind, locale, options) {
  const key = JSON.stringify([kind.name, locale, options])
  if (!held.has(key)) held.set(key, new kind(locale, options))
  return held.get(key)
}

/** What writes dates. */
export const dates = (locale, options) => kept(Intl.DateTimeFormat, locale, options)

/** What writes numbers. */
export const numbers = (locale, options) => kept(Intl.NumberFormat, locale, options)
