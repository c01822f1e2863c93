// The files that the page loads besides itself, by name. The build names each by its content, so that a browser may keep it for
// good, and puts their names in the place of FILES.
/* global FILES */

/** The address of a file. */
export const addressOf = (name) => new URL(FILES[name], import.meta.url)

/** Loads a file; an error has its name and what the server says. */
export async function loaded(name) {
  const response = await fetch(addressOf(name))
  if (!response.ok) throw new Error(`${FILES[name]}: ${response.status} ${response.statusText}`)
  return response
}
