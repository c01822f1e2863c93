// A new version of the page.
export default {
  here: 'Eine neue Version dieser Seite ist da. Aufträge, Buch, Häkchen und Uhren bleiben.',
  use: 'Jetzt benutzen',
}
