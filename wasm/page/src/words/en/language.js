// The choice of a language.
export default {
  language: 'Language',
  failed: 'The page cannot speak {name} now ({why}). Load it again when the network is there.',
  browser: 'As the browser has it: {name}',
}
