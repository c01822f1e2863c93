// A new version of the page.
export default {
  here: 'A new version of this page is here. Orders, book, ticks and clocks stay.',
  use: 'Use it now',
}
