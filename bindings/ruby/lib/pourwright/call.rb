# frozen_string_literal: true

require_relative "library"

module Pourwright
  # Calculations on plain numbers: Ruby's arguments become those of a call to C, its results Ruby's.
  class Call
    # An omitted number in C.
    OMITTED = -Float::MAX

    # The largest number means an omitted count.
    MOST = Library::CONSTANTS["POUR_OMITTED_COUNT"] - 1

    # The directive of `pack` and the size of a number, a count, a word and an address or a length.
    NUMBER = ["d", 8].freeze
    COUNT = ["L", 4].freeze
    WORD = ["l", 4].freeze
    ADDRESS = ["J", Fiddle::SIZEOF_VOIDP].freeze

    # The results of the calculation `name`: where `input`, its arguments go in a struct; where `result`, its results come in one.
    #
    # A field is its name, kind and value, then the words of a word, the numbers in a row. A result is its name and kind, then the
    # words of a word, the length of a list.
    def self.of(name, fields, results, input:, result:)
      new.of("pour_#{name}", fields, results, input, result)
    end

    def initialize
      @faults = []
      # What C reads until the call is over.
      @kept = []
    end

    def of(symbol, fields, results, input, result)
      members = fields.flat_map { |field| members_of(*field) }
      raise Library.refused(*@faults) unless @faults.empty?

      arguments = input ? [struct(members)] : members.map(&:last)
      places, bytes = layout(results.flat_map { |one| shape(one) })
      found = Library.memory(bytes)
      Library.checked(symbol, *arguments, found)
      made = results.to_h { |one| [one[0], made(one, found, places)] }
      result ? made : made.values.first
    end

    private

    # What C takes for a field: shape and value of one member, or of two.
    def members_of(name, kind, value, extra = nil)
      path = "/#{name}"
      case kind
      when :number then [[NUMBER, value.nil? ? OMITTED : number(path, value)]]
      when :count then [[COUNT, value.nil? ? MOST + 1 : count(path, value)]]
      when :word then [[WORD, value.nil? ? 0 : word(path, value, extra)]]
      when :text then [[ADDRESS, value && text(path, value)]]
      else
        address, length = value.nil? ? [nil, 0] : numbers(path, value, extra)
        [[ADDRESS, address], [ADDRESS, length]]
      end
    end

    # The shapes of the cells of a result.
    def shape((_, kind, extra))
      case kind
      when :number then [NUMBER]
      when :word then [WORD]
      when :count then [COUNT]
      when :list then [COUNT] * extra
      end
    end

    # Where C puts members of these shapes, and how many bytes they take.
    def layout(shapes)
      bytes = 0
      places = shapes.map do |_, size|
        place = aligned(bytes, size)
        bytes = place + size
        place
      end
      [places, aligned(bytes, shapes.map(&:last).max)]
    end

    # The first place from this one on that a member of this size can have.
    def aligned(bytes, size)
      (bytes + size - 1) / size * size
    end

    # The struct of these members, which begins with its size.
    def struct(members)
      members = [[ADDRESS, 0], *members]
      places, bytes = layout(members.map(&:first))
      members[0] = [ADDRESS, bytes]
      made = Library.memory(bytes)
      members.zip(places) do |((directive, size), value), place|
        value = value.to_i if directive == "J"
        made[place, size] = [value].pack(directive)
      end
      made
    end

    def fault(code, path, message, help)
      @faults << Fault.new(code, path, message, help)
      nil
    end

    def wrong_type(path, wanted, value)
      fault("wrong-type", path, "#{path[1..]} must be #{wanted}, not #{value.class}.", "Pass #{wanted}.")
    end

    def number(path, value)
      return wrong_type(path, "a number", value) unless value.is_a?(Numeric) && value.real?

      number = Float(value)
      return number unless number == OMITTED

      fault("out-of-range", path, "#{path[1..]} is #{number}, which is out of range.", "Check the number.")
    end

    def count(path, value)
      return wrong_type(path, "a whole number", value) unless value.is_a?(Integer)
      return value if value.between?(0, MOST)

      fault("out-of-range", path, "#{path[1..]} is #{value}, which is out of range.", "Give a whole number from 0 to #{MOST}.")
    end

    def word(path, value, words)
      return wrong_type(path, "a word", value) unless value.is_a?(String) || value.is_a?(Symbol)

      place = words.index(value.to_s)
      place ? place + 1 : fault("unknown-word", path, "#{value.inspect} is not a word for #{path[1..]}.", "Known: #{words.join(", ")}.")
    end

    # A text of its own for C, where a NUL ends it.
    def text(path, value)
      return wrong_type(path, "a text", value) unless value.is_a?(String)

      bytes = Document.utf8(value)
      return fault("not-utf8", path, "#{path[1..]} is not text in UTF-8.", "Convert it first.") if bytes.nil?
      return fault("wrong-type", path, "#{path[1..]} must not have a NUL character.", "Remove it.") if bytes.include?("\0")

      keep("#{bytes}\0")
    end

    # Memory for C with these bytes, which does not move.
    def keep(bytes)
      made = Library.memory(bytes.bytesize)
      made[0, bytes.bytesize] = bytes
      @kept << made
      made
    end

    # A list of numbers, or of rows of `columns` numbers, with its length.
    def numbers(path, values, columns)
      return wrong_type(path, "a list", values) unless values.respond_to?(:to_ary)

      values = values.to_ary
      found = values.each_with_index.flat_map do |value, index|
        columns ? row("#{path}/#{index}", value, columns) : [number("#{path}/#{index}", value)]
      end
      [keep(found.map { |one| one || 0.0 }.pack("d*")), values.length]
    end

    def row(path, value, columns)
      row = value.respond_to?(:to_ary) ? value.to_ary : []
      return [wrong_type(path, "#{columns} numbers", value)] unless row.length == columns

      row.each_with_index.map { |one, column| number("#{path}/#{column}", one) }
    end

    # A result of C as Ruby has it; takes its places off the list.
    def made((_, kind, extra), found, places)
      case kind
      when :number
        number = cell(NUMBER, found, places)
        number.nan? ? nil : number
      when :count
        count = cell(COUNT, found, places)
        count > MOST ? nil : count
      when :word
        place = cell(WORD, found, places)
        place.zero? ? nil : extra[place - 1]
      when :list
        Array.new(extra) { cell(COUNT, found, places) }
      end
    end

    def cell((directive, size), found, places)
      found[places.shift, size].unpack1(directive)
    end
  end
end
