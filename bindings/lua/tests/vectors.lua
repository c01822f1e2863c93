--- Every request of tests/vectors, as text and as tables: the answers are the same, to the bit.

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
check.that(#requests == #answers and #requests > 200)
local as_tables = 0
for index, request in ipairs(requests) do
  local found, wanted = pourwright.answer_text(request), answers[index]
  check.that(found == wanted, ("line %d\n  %s\n  not\n  %s"):format(index, found, wanted))

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
check.that(as_tables > 0.9 * #requests, as_tables .. " of " .. #requests .. " as tables")

-- Tables keep their numbers.
for _, number in ipairs { 0.1, 1 / 3, 5e-324, 0x1.fffffffffffffp+1023, -0.0, 2 ^ 53 - 1, 1e21, 123456.789e-7 } do
  check.that(check.same(json.decode(json.encode(number)), number), number)
end

check.finish "vectors"
