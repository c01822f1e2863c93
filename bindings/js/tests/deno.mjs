// Both entries in Deno, which reads the package as Node does.
for (const page of ['./page.js', './scalar-page.js']) {
  await import(page)
  if (globalThis.answer !== 236.5882365) throw new Error(`${page}: ${globalThis.answer}`)
}
