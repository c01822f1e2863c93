// The choice of a language.
export default {
  language: 'Sprache',
  failed: 'Die Seite kann jetzt kein {name} ({why}). Laden Sie sie neu, wenn das Netz da ist.',
  browser: 'Wie im Browser: {name}',
}
