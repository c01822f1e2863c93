# frozen_string_literal: true

# Books, plans, requests, threads: right, wrong and odd.

require_relative "check"

book_text = Check.text_of("core/examples/demo/book.json")
orders_text = Check.text_of("core/examples/demo/orders.json")
Check.that(Pourwright::VERSION == ENV.fetch("POURWRIGHT_VERSION"), Pourwright::VERSION)

# A book and a plan.
book = Pourwright::Book.new(book_text)
plan = book.plan(orders_text)
Check.that(plan.sheet.include?("ORDER OF WORK") && plan.notes.include?("COST in USD") && plan.sheet.encoding == Encoding::UTF_8)
Check.that(plan.to_h["pots"][0]["pot"] == "A" && plan.to_h["made_from"])
of_values = Pourwright::Book.new(JSON.parse(book_text)).plan(JSON.parse(orders_text, symbolize_names: true))
Check.that(of_values.sheet == plan.sheet)
again = Pourwright::Plan.new(plan.json)
Check.that(again.json == plan.json)
Check.that(Pourwright::Plan.new(plan.to_h).sheet == plan.sheet)

# Requests of what is open.
formula = { calculate: "formula", formulas: %w[dusk plain], base_amount: "1 cup" }
Check.that(Check.same?(book.request(formula), plan.request(:formula, formulas: %w[dusk plain], base_amount: "1 cup")))
actuals = { format: "pourwright/1.0", pots: {} }
Check.that(Check.same?(plan.request("record", actuals: actuals), again.request({ "calculate" => "record", "actuals" => actuals })))
Check.refused("missing-field", "") { book.request("record", actuals: actuals) }
Check.refused("missing-field", "") { Pourwright.calculate(formula) }
Check.refused("missing-field", "") { plan.request({}) }
Check.refused("open-and-given", "/book") { book.request(formula, book: JSON.parse(book_text)) }
Check.refused("unknown-calculation", "/calculate") { Pourwright.calculate("no such") }

# Budgets.
Check.that(book.plan(orders_text, pots: 5, thousand_steps: 1000).json == plan.json)
Check.refused("budget-pots", "") { book.plan(orders_text, pots: 1) }
Check.refused("budget-work", "") { book.plan(orders_text, thousand_steps: 0) }
[-1, 2**32 - 1, 1.5, "5", true].each { |wrong| Check.refused("out-of-range", "/pots") { book.plan(orders_text, pots: wrong) } }

# Wrong documents have all their faults.
wrong = JSON.parse(book_text)
wrong["materials"]["clear-base"]["density"] = "6 oz"
wrong["molds"]["no-mold"] = {}
error = Check.refused("amount-ambiguous", "/materials/clear-base/density") { Pourwright::Book.new(wrong) }
Check.that(error.faults.length > 1 && error.status == 6)
Check.refused("not-json", "") { Pourwright::Book.new("{") }
Check.refused("not-utf8", "/json") { Pourwright::Book.new("\xff") }
Check.refused("too-large", "/json") { Pourwright::Book.new(" " * (16 * 1024 * 1024 + 1)) }
Check.refused("not-json", "") { book.plan("[") }
Check.refused("unknown-name", "/lines/2/product") { book.plan(orders_text.sub("reed paddle", "reed padle")) }
Check.refused("wrong-type", "") { Pourwright::Plan.new("[]") }
[5, nil, true, Object.new].each do |odd|
  Check.refused("wrong-type", "") { Pourwright::Book.new(odd) }
  Check.refused("wrong-type", "") { Pourwright.calculate(odd) }
  Check.refused("wrong-type", "") { Pourwright.answer_text(odd) }
end

# Values that no JSON has, each at its place.
convert = ->(amount) { Pourwright.calculate("convert", amount: amount, to: "g") }
Check.refused("not-finite", "/amount/value") { convert.(value: Float::NAN, unit: "g") }
Check.refused("not-utf8", "/amount") { convert.("\xff") }
Check.refused("wrong-type", "/amount/a~1b/0") { convert.("a/b" => [Object.new]) }
Check.refused("wrong-type", "/amount") { convert.(1 => 2) }
circle = {}
circle["calculate"] = circle
Check.that(Check.refused("wrong-type", "/calculate" * 201) { Pourwright.calculate(circle) }.faults.length == 1)
Check.that(convert.(value: 1 / 3.0, unit: "g")["value"].eql?(1 / 3.0))

# Handles.
plan.close
plan.close
Check.refused("plan-freed", "") { plan.sheet }
Check.refused("plan-freed", "") { plan.request("record", actuals: actuals) }
book.close
book.close
Check.refused("book-freed", "") { book.plan(orders_text) }
Check.that(again.sheet.include?("ORDER OF WORK"), "a plan outlives its book")
Check.raises(TypeError) { again.dup }
Check.raises(TypeError) { Marshal.dump(again) }
200.times { Pourwright::Book.new(book_text) }
GC.start

# Threads share a book.
book = Pourwright::Book.new(book_text)
sheets = Array.new(4) { Thread.new { Array.new(5) { book.plan(orders_text).sheet }.uniq } }.flat_map(&:value).uniq
Check.that(sheets == [again.sheet])

# Texts of requests.
Check.that(Pourwright.answer_text("{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"mL\"}\0").include?('"not-json"'))
Check.that(Pourwright.answer_text("").start_with?('{"faults":'))
Check.that(Pourwright.answer_text("\xff").include?('"not-utf8"'))

# Schemas.
Check.that(Check.same?(Pourwright.schema("orders"), JSON.parse(Check.text_of("core/schema/orders.json"))))
Check.that(Check.refused("no-such-schema", "/name") { Pourwright.schema("shop") }.help.include?("request"))
Check.refused("wrong-type", "/name") { Pourwright.schema("orders\0") }
Check.refused("wrong-type", "/name") { Pourwright.schema(5) }

Check.finish("documents")
