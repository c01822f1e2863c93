# frozen_string_literal: true

# Plans a day: ruby day.rb BOOK.json ORDERS.json prints the bench sheet, or all faults of the two files.

require "pourwright"

abort "Usage: ruby day.rb BOOK.json ORDERS.json" unless ARGV.length == 2

# What the block makes of a file; prints all its faults and ends where it is refused.
def of(path)
  yield File.read(path)
rescue Pourwright::Error => error
  error.faults.each { |fault| warn "#{path}#{fault.path}: #{fault.message} #{fault.help} [#{fault.code}]" }
  exit 1
end

book = of(ARGV[0]) { |text| Pourwright::Book.new(text) }
puts of(ARGV[1]) { |orders| book.plan(orders) }.sheet
