--- Documents: calculations as requests, the shop's book, the day's plan.

local ffi = require "ffi"
local fault = require "pourwright.fault"
local json = require "pourwright.json"
local library = require "pourwright.library"

local document = {}

--- The JSON text of a document: a table, or its JSON text already.
local function text_of(given)
  if type(given) == "string" then
    return given
  elseif type(given) == "table" then
    return json.encode(given)
  end
  local message = ("A document is a table or JSON text, not %s."):format(type(given))
  fault.raise(library.POUR_REFUSED, { fault.new("wrong-type", "", message, "Pass a table, or the text of a file.") })
end

--- The text that a call writes through the pointers after its arguments.
local function handed_out(call, ...)
  local out, length = ffi.new "char *[1]", ffi.new "size_t[1]"
  local arguments, count = { ... }, select("#", ...)
  arguments[count + 1], arguments[count + 2] = out, length
  fault.checked(call, unpack(arguments, 1, count + 2))
  local text = ffi.string(out[0], length[0])
  library.pour_string_free(out[0])
  return text
end

--- The handle that a call writes through the pointer after its arguments, freed with the last reference to it.
local function opened(kind, free, call, ...)
  local out = ffi.new(kind .. " *[1]")
  local arguments, count = { ... }, select("#", ...)
  arguments[count + 1] = out
  fault.checked(call, unpack(arguments, 1, count + 1))
  return ffi.gc(out[0], free)
end

--- The result of a request, a table.
local function answered(call, request, ...)
  local text = text_of(request)
  local arguments, count = { ... }, select("#", ...)
  arguments[count + 1], arguments[count + 2] = text, #text
  return json.decode(handed_out(call, unpack(arguments, 1, count + 2))).result
end

--- Answers a request given as JSON text with JSON text: `{"result":...}` or `{"faults":...}`. The text is the same at every
-- door. A faulty request raises no error.
-- @tparam string request
-- @treturn string
function document.answer_text(request)
  if type(request) ~= "string" then
    text_of(0)
  end
  local out, length, failed = ffi.new "char *[1]", ffi.new "size_t[1]", ffi.new "pour_error *[1]"
  if library.pour_request(request, #request, out, length, failed) ~= library.POUR_OK then
    local faults = ffi.string(library.pour_error_json(failed[0]))
    library.pour_error_free(failed[0])
    return faults
  end
  local answer = ffi.string(out[0], length[0])
  library.pour_string_free(out[0])
  return answer
end

--- Does one calculation: `calculate { calculate = "convert", amount = "1 1/4 cup", to = "mL" }.value`.
-- @tparam table|string request Its fields are in core/schema/request.json, those of the result in core/schema/answer.json.
-- @treturn table
function document.calculate(request)
  return answered(library.pour_request, request)
end

--- A JSON Schema, as a table: "request", "answer", "book", "orders", "actuals", "plan".
function document.schema(name)
  if type(name) ~= "string" or name:find("%z") then
    fault.raise(library.POUR_REFUSED, { fault.new("wrong-type", "/name", "The name is not a text.", "Pass \"request\".") })
  end
  return json.decode(handed_out(library.pour_schema, name))
end

local Book, Plan = {}, {}
Book.__index, Plan.__index = Book, Plan

--- The open handle.
local function held(open)
  if open.handle == nil then
    local message = ("The %s has been closed."):format(open.kind)
    fault.raise(library.POUR_NULL, { fault.new(open.kind .. "-freed", "", message, "Open it again.") })
  end
  return open.handle
end

local function close(open, free)
  if open.handle ~= nil then
    free(ffi.gc(open.handle, nil))
    open.handle = nil
  end
end

local function plan_of(handle)
  return setmetatable({ handle = handle, kind = "plan" }, Plan)
end

--- Opens the shop's book: a table, or its JSON text. Memory is freed with the last reference to it, or by `close`.
function document.book(book)
  local text = text_of(book)
  local handle = opened("pour_book", library.pour_book_free, library.pour_book_from_json, text, #text)
  return setmetatable({ handle = handle, kind = "book" }, Book)
end

--- Plans the day of an order list: a table, or its JSON text.
-- @param orders
-- @tparam[opt] table budget Maximum `pots` (default: 5000) and `thousand_steps` of work (default: 10000).
function Book:plan(orders, budget)
  local text, none = text_of(orders), library.POUR_OMITTED_COUNT
  if budget ~= nil and type(budget) ~= "table" then
    local message = ("A budget is a table, not %s."):format(type(budget))
    fault.raise(library.POUR_REFUSED, { fault.new("wrong-type", "/budget", message, "Pass { pots = 40 }.") })
  end
  budget = budget or {}
  local faults = {}
  for name, value in pairs(budget) do
    if name ~= "pots" and name ~= "thousand_steps" then
      local message = ("A budget has no %q."):format(tostring(name))
      faults[#faults + 1] = fault.new("unknown-field", "/" .. tostring(name), message, "Known: pots, thousand_steps.")
    elseif type(value) ~= "number" or value % 1 ~= 0 or value < 0 or value >= none then
      local help = "Give a whole number from 0 to 4294967294."
      faults[#faults + 1] = fault.new("wrong-type", "/" .. name, name .. " is not a count.", help)
    end
  end
  if #faults > 0 then
    fault.raise(library.POUR_REFUSED, faults)
  end
  local pots, steps = budget.pots or none, budget.thousand_steps or none
  return plan_of(opened("pour_plan", library.pour_plan_free, library.pour_book_plan_within, held(self), text, #text, pots,
    steps, nil, nil))
end

--- Does the calculation of a request, which leaves `book` out.
function Book:request(request)
  return answered(library.pour_book_request, request, held(self))
end

--- Frees the memory now.
function Book:close()
  close(self, library.pour_book_free)
end

--- Opens a plan again: its data, or their JSON text, with the book in it.
function document.plan(plan)
  local text = text_of(plan)
  return plan_of(opened("pour_plan", library.pour_plan_free, library.pour_plan_from_json, text, #text))
end

--- Does the calculation of a request, which leaves `book` and `plan` out.
function Plan:request(request)
  return answered(library.pour_plan_request, request, held(self))
end

--- The plan as JSON text, complete: to be stored, and opened again.
function Plan:json()
  return handed_out(library.pour_plan_json, held(self))
end

--- The plan as a table: core/schema/plan.json.
function Plan:document()
  return json.decode(self:json())
end

--- The bench sheet: text of 80 columns.
function Plan:sheet()
  return handed_out(library.pour_plan_sheet, held(self))
end

--- The notes to it: what to know beyond the sheet.
function Plan:notes()
  return handed_out(library.pour_plan_notes, held(self))
end

--- Frees the memory now.
function Plan:close()
  close(self, library.pour_plan_free)
end

return document
