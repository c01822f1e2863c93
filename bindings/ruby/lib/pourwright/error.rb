# frozen_string_literal: true

module Pourwright
  # One fault: a stable code, its place as a JSON Pointer, what was found, and what would fix it.
  Fault = Struct.new(:code, :path, :message, :help) do
    # The fault in one line.
    def to_s
      place = path.empty? ? "" : "#{path}: "
      "#{place}#{message} #{help} [#{code}]"
    end
  end

  # A refused call, with all that is wrong with it. Its message has all faults, one a line.
  class Error < ArgumentError
    # All faults, the first found first, and the status of the C library.
    attr_reader :faults, :status

    def initialize(faults, status)
      @faults = faults.map(&:freeze).freeze
      @status = status
      super(faults.join("\n"))
    end

    # The code of the first fault.
    def code = faults.first.code

    # The path of the first fault.
    def path = faults.first.path

    # What would fix the first fault.
    def help = faults.first.help
  end
end
