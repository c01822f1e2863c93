# frozen_string_literal: true

# What the tests share.

require "json"
require "pourwright"

module Check
  ROOT = ENV.fetch("POURWRIGHT_ROOT")
  @count = 0
  @failures = 0

  module_function

  def text_of(path) = File.read(File.join(ROOT, path), encoding: "UTF-8")

  # Counts, and prints what does not hold.
  def that(holds, what = "does not hold")
    @count += 1
    return if holds

    @failures += 1
    at = caller_locations.find { |place| place.path != __FILE__ }
    warn "#{File.basename(at.path)}:#{at.lineno}: #{what}"
  end

  # Whether two values are the same, numbers by their bits.
  def same?(one, other)
    case one
    when Float then other.is_a?(Float) && [one].pack("D") == [other].pack("D")
    when Hash then other.is_a?(Hash) && one.keys.sort == other.keys.sort && one.all? { |name, value| same?(value, other[name]) }
    when Array then other.is_a?(Array) && one.length == other.length && one.zip(other).all? { |pair| same?(*pair) }
    else one.eql?(other)
    end
  end

  # Checks that the block is refused with this fault among its faults; gives the error.
  def refused(code, path)
    yield
    that(false, "no #{code} at #{path}: not refused")
  rescue Pourwright::Error => error
    right = error.faults.any? do |fault|
      fault.code == code && fault.path == path && !fault.message.empty? && !fault.help.empty?
    end
    that(right, "no #{code} at #{path}: #{error.message}")
    error
  end

  # Checks that the block raises an error of Ruby itself.
  def raises(kind)
    yield
    that(false, "no #{kind}")
  rescue kind => error
    that(!error.is_a?(Pourwright::Error), error.message)
  end

  # Ends the test.
  def finish(name)
    abort "#{name}: #{@failures} of #{@count} checks failed" if @failures.positive?
    puts "#{name}: #{@count} checks"
  end
end
