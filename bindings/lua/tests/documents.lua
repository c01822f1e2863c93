--- Books, plans, requests, JSON: right, wrong and odd.

local ffi = require "ffi"
local check = require "check"
local pourwright = require "pourwright"

local json = pourwright.json
local book_text = check.text_of "core/examples/demo/book.json"
local orders_text = check.text_of "core/examples/demo/orders.json"

check.that(pourwright.version == os.getenv "POURWRIGHT_VERSION", pourwright.version)

-- A book and a plan.
local book = pourwright.book(book_text)
local plan = book:plan(orders_text)
check.that(plan:sheet():find "ORDER OF WORK" and plan:notes():find "COST in USD")
check.that(plan:document().pots[1].pot == "A" and plan:document().made_from ~= nil)
local of_tables = pourwright.book(json.decode(book_text)):plan(json.decode(orders_text))
check.that(of_tables:sheet() == plan:sheet())
local again = pourwright.plan(plan:json())
check.that(again:json() == plan:json())
check.that(pourwright.plan(plan:document()):sheet() == plan:sheet())

-- Requests of what is open.
local formula = { calculate = "formula", formulas = { "dusk", "plain" }, base_amount = "1 cup" }
check.that(check.same(book:request(formula), plan:request(json.encode(formula))))
local record = { calculate = "record", actuals = { format = "pourwright/1.0", pots = {} } }
check.that(check.same(plan:request(record), again:request(record)))
check.refused("missing-field", "", book.request, book, record)
check.refused("missing-field", "", pourwright.calculate, formula)
check.refused("missing-field", "", plan.request, plan, {})
formula.book = json.decode(book_text)
check.refused("open-and-given", "/book", book.request, book, formula)

-- Budgets.
check.that(book:plan(orders_text, { pots = 5, thousand_steps = 1000 }):json() == plan:json())
check.refused("budget-pots", "", book.plan, book, orders_text, { pots = 1 })
check.refused("budget-work", "", book.plan, book, orders_text, { thousand_steps = 0 })
for _, wrong in ipairs { 1.5, -1, 0 / 0, math.huge, 2 ^ 32 - 1, "5", true } do
  check.refused("wrong-type", "/pots", book.plan, book, orders_text, { pots = wrong })
end
check.refused("wrong-type", "/budget", book.plan, book, orders_text, 5)
check.refused("unknown-field", "/cups", book.plan, book, orders_text, { cups = 1 })

-- Wrong documents have all their faults.
local wrong = json.decode(book_text)
wrong.materials["clear-base"].density = "6 oz"
wrong.molds.no_mold = {}
local failed = check.refused("amount-ambiguous", "/materials/clear-base/density", pourwright.book, wrong)
check.that(#failed.faults > 1 and failed.status == 6)
check.refused("not-json", "", pourwright.book, "{")
check.refused("not-utf8", "/json", pourwright.book, "\255")
check.refused("too-large", "/json", pourwright.book, (" "):rep(16 * 1024 * 1024 + 1))
check.refused("not-json", "", book.plan, book, "[")
check.refused("unknown-name", "/lines/2/product", book.plan, book, (orders_text:gsub("reed paddle", "reed padle")))
check.refused("wrong-type", "", pourwright.plan, "[]")
for _, odd in ipairs { 5, true, print, ffi.new "int[1]" } do
  check.refused("wrong-type", "", pourwright.book, odd)
  check.refused("wrong-type", "", pourwright.calculate, odd)
  check.refused("wrong-type", "", pourwright.answer_text, odd)
end
check.refused("wrong-type", "", pourwright.book, nil)

-- Handles.
plan:close()
plan:close()
check.refused("plan-freed", "", plan.sheet, plan)
check.refused("plan-freed", "", plan.request, plan, record)
book:close()
book:close()
check.refused("book-freed", "", book.plan, book, orders_text)
check.that(again:sheet():find "ORDER OF WORK", "a plan outlives its book")
for _ = 1, 200 do
  pourwright.book(book_text)
end
collectgarbage()
collectgarbage()

-- Texts of requests.
check.that(pourwright.answer_text('{"calculate":"convert","amount":"1 cup","to":"mL"}\0'):find '"not%-json"')
check.that(pourwright.answer_text(""):find '"faults"')
check.that(pourwright.calculate('{"calculate":"convert","amount":"1 1/4 cup","to":"mL"}').value == 295.735295625)
check.that(pourwright.calculate({ calculate = "convert", amount = { value = 0.5, unit = "kg" }, to = "g" }).value == 500)

-- Schemas.
check.that(check.same(pourwright.schema "orders", json.decode(check.text_of "core/schema/orders.json")))
check.that(check.refused("no-such-schema", "/name", pourwright.schema, "shop").help:find "request")
check.refused("wrong-type", "/name", pourwright.schema, 5)

-- JSON, both ways.
for text, value in pairs {
  ["null"] = json.null,
  ["[]"] = json.array {},
  ["{}"] = {},
  ['[1,[true,"x"],{"a":null}]'] = { 1, { true, "x" }, { a = json.null } },
  ['"\\"\\\\\\n\\u0001é\127"'] = "\"\\\n\1é\127",
} do
  check.that(json.encode(value) == text, json.encode(value))
  check.that(check.same(json.decode(" " .. text .. "\n"), value), text)
end
check.that(json.decode '"\\u00e9\\u20ac\\ud83d\\ude00\\/"' == "é€😀/")
for _, text in ipairs {
  "", "{", "[1,]", "[1 2]", '{"a"}', '{"a":}', "{1:2}", "nul", "01", "1.", "-", "1e", '"', '"\\x"', '"\\u12"', '"\\ud800"',
  '"\\udc00"', "[] []", '"\n"', "+1", ".5",
} do
  check.refused("not-json", "", json.decode, text)
end
for path, odd in pairs {
  ["/a/b~1c"] = { a = { ["b/c"] = print } },
  ["/1"] = { 1, print },
  [""] = { 1, x = 2 },
} do
  check.refused("wrong-type", path, json.encode, odd)
end
check.refused("not-finite", "/a/0", json.encode, { a = { 0 / 0 } })
local circle = {}
circle.circle = circle
check.that(not pcall(json.encode, circle))

check.finish "documents"
