--- Every vector of tests/vectors: calls on plain numbers, and requests as text and as tables: the answers are the same, to
-- the bit. Where POURWRIGHT_ANSWERS names a folder, the answers are written there: tests/doors.

local check = require "check"
local pourwright = require "pourwright"

local json = pourwright.json

local function lines(path)
  local list = {}
  for line in check.text_of(path):gmatch "([^\n]*)\n" do
    list[#list + 1] = line
  end
  return list
end

local function write_answers(name, answers)
  local folder = os.getenv "POURWRIGHT_ANSWERS"
  if folder then
    local file = assert(io.open(folder .. "/lua." .. name .. ".jsonl", "wb"))
    file:write(table.concat(answers, "\n"), "\n")
    file:close()
  end
end

local NOT_FINITE = { NaN = 0 / 0, Infinity = math.huge, ["-Infinity"] = -math.huge }

--- A value of a call as Lua has it: what is no number in JSON is written as a text.
local function plain(kind, value)
  if type(value) == "table" then
    for index, item in ipairs(value) do
      value[index] = plain(kind, item)
    end
    return value
  end
  return kind ~= "text" and kind ~= "word" and NOT_FINITE[value] or value
end

local calculations = {}
for _, calculation in ipairs(json.decode(check.text_of "core/schema/calculations.json").calculations) do
  calculations[calculation.name] = calculation
end

--- What the library answers to a call, as the vectors have it.
local function answer_to(call)
  local calculation = calculations[call.call]
  local given = call.given
  for _, parameter in ipairs(calculation.parameters) do
    given[parameter.field] = plain(parameter.kind, given[parameter.field])
  end
  local good, found = pcall(pourwright[call.call], given)
  if not good then
    local faults = {}
    for index, fault in ipairs(type(found) == "table" and found.faults or error(found, 0)) do
      faults[index] = { code = fault.code, path = fault.path }
    end
    return { faults = faults }
  end
  local results = {}
  for _, result in ipairs(calculation.results) do
    local value = found
    if type(found) == "table" then
      value = found[result.field]
    end
    results[result.field] = value == nil and json.null or value
  end
  return { results = results }
end

local calls, found = lines "tests/vectors/calls.jsonl", {}
check.that(#calls > 600)
for index, line in ipairs(calls) do
  local call = json.decode(line)
  local answer = answer_to(call)
  local same = check.same(answer, { results = call.results, faults = call.faults })
  found[index] = json.encode(answer)
  check.that(same, ("calls.jsonl:%d: %s, %s gives %s"):format(index, call.call, call.case, found[index]))
end
write_answers("calls", found)

--- Whether a table can stand for a JSON text: one that is JSON, without names twice and numbers that no double holds.
local function held(text, answer)
  if answer:find('"code":"duplicate-', 1, true) or answer:find('"code":"not-json"', 1, true) then
    return nil
  end
  for digits in text:gmatch "%d+" do
    if #digits > 15 then
      return nil
    end
  end
  local good, value = pcall(json.decode, text)
  return good and type(value) == "table" and value or nil
end

local requests, answers = lines "tests/vectors/requests.jsonl", lines "tests/vectors/answers.jsonl"
check.that(#requests == #answers and #requests > 400)
local as_tables = 0
found = {}
for index, request in ipairs(requests) do
  local wanted = answers[index]
  found[index] = pourwright.answer_text(request)
  check.that(found[index] == wanted, ("line %d\n  %s\n  not\n  %s"):format(index, found[index], wanted))

  local value = held(request, wanted)
  if value ~= nil then
    as_tables = as_tables + 1
    local good, result = pcall(pourwright.calculate, value)
    if type(result) ~= "table" then
      error(result, 0)
    end
    local answer = good and { result = result } or { faults = result.faults }
    check.that(check.same(answer, json.decode(wanted)), ("line %d as a table: %s"):format(index, tostring(result)))
  end
end
check.that(as_tables > 0.85 * #requests, as_tables .. " of " .. #requests .. " as tables")
write_answers("requests", found)

-- Tables keep their numbers.
for _, number in ipairs { 0.1, 1 / 3, 5e-324, 0x1.fffffffffffffp+1023, -0.0, 2 ^ 53 - 1, 1e21, 123456.789e-7 } do
  check.that(check.same(json.decode(json.encode(number)), number), number)
end

check.finish "vectors"
