# frozen_string_literal: true

require_relative "document"

module Pourwright
  # What a book and a plan have in common: a handle, which is freed with its object or by `close`.
  class Open
    # Frees the memory now. No other thread may be in a call of it.
    def close
      @handle&.call_free
      @handle = nil
    end

    def initialize_copy(_)
      raise TypeError, "#{self.class} cannot be copied"
    end

    private

    def held
      kind = self.class::KIND
      @handle || raise(Document.refusal("#{kind}-freed", "", "The #{kind} has been closed.", "Open it again."))
    end
  end

  # A shop's book, read once for many plans and requests, by any number of threads.
  class Book < Open
    KIND = "book"

    # @param book [String, Hash] JSON text, or what stands for it.
    # @raise [Error] All faults of the book.
    def initialize(book)
      super()
      text = Document.text(book)
      @handle = Library.handle("pour_book_free", "pour_book_from_json", text, text.bytesize)
    end

    # Plans the day of an order list.
    #
    # @param pots [Integer, nil] Maximum number of pots. Default: 5000.
    # @param thousand_steps [Integer, nil] Maximum work, in thousands of steps. Default: 10000.
    # @raise [Error] All faults of the order list, or why there is no plan.
    def plan(orders, pots: nil, thousand_steps: nil)
      text = Document.text(orders)
      faults = { pots: pots, thousand_steps: thousand_steps }.filter_map do |name, count|
        next if count.nil? || (count.is_a?(Integer) && count.between?(0, Call::MOST))

        Fault.new("out-of-range", "/#{name}", "#{name} is #{count.inspect}.", "Give a whole number from 0 to #{Call::MOST}.")
      end
      raise Library.refused(*faults) unless faults.empty?

      none = Call::MOST + 1
      arguments = [held, text, text.bytesize, pots || none, thousand_steps || none, nil, nil]
      Plan.of_handle(Library.handle("pour_plan_free", "pour_book_plan_within", *arguments))
    end

    # Does the calculation of a request, its name or the whole of it, which leaves `book` out.
    #
    # @raise [Error] All faults of the request.
    def request(request, **fields)
      Document.answered("pour_book_request", request, fields, held)
    end
  end

  # A day's plan, with the book that it was made from, for any number of threads. Show its `cautions` to the person who pours.
  class Plan < Open
    KIND = "plan"

    # Opens a plan again: what `json` or `to_h` gave.
    #
    # @raise [Error] All its faults.
    def initialize(plan)
      super()
      text = Document.text(plan)
      @handle = Library.handle("pour_plan_free", "pour_plan_from_json", text, text.bytesize)
    end

    # @private
    def self.of_handle(handle)
      allocate.tap { |plan| plan.instance_variable_set(:@handle, handle) }
    end

    # Does the calculation of a request, its name or the whole of it, which leaves `book` and `plan` out.
    #
    # @raise [Error] All faults of the request.
    def request(request, **fields)
      Document.answered("pour_plan_request", request, fields, held)
    end

    # The plan as JSON, complete: to be stored, and opened again.
    def json = Library.text("pour_plan_json", held)

    # The plan as a Hash: core/schema/plan.json.
    def to_h = Document.read(json)

    # The bench sheet: text of 80 columns.
    def sheet = Library.text("pour_plan_sheet", held)

    # The notes to it: what to know beyond the sheet.
    def notes = Library.text("pour_plan_notes", held)
  end
end
