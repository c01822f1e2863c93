// The plan of the day: whether it is there, and why not.
export default {
  noStart: 'The page could not start: {why}',
}
