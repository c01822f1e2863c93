// Ticks.
export default {
  clear: 'Clear all ticks and clocks? All pots are then planned again from nothing, also those that are begun.',
  before: 'The ticks here were made for {day}.',
  beforeNoDay: 'The ticks here were made for a list without a day.',
  keep: 'Keep them',
}
