--- Every calculation of the table: its example to the bit, and each way in which a parameter can be wrong.

local check = require "check"
local pourwright = require "pourwright"

local json = pourwright.json
local table_of = json.decode(check.text_of "core/schema/calculations.json").calculations
local nothing = json.null

--- The rows of a list of numbers.
local function rows(numbers, columns)
  local list = {}
  for index, number in ipairs(numbers) do
    local row = math.ceil(index / columns)
    list[row] = list[row] or {}
    table.insert(list[row], number)
  end
  return list
end

--- The example's arguments by name.
local function arguments(calculation)
  local given = {}
  for index, parameter in ipairs(calculation.parameters) do
    local argument = calculation.example.arguments[index]
    if argument ~= nothing then
      given[parameter.field] = parameter.kind == "rows" and rows(argument, #parameter.columns) or argument
    end
  end
  return given
end

--- The same with one changed.
local function with(given, name, value)
  local changed = {}
  for known, argument in pairs(given) do
    changed[known] = argument
  end
  changed[name] = value
  return changed
end

local function results(calculation)
  local wanted = {}
  for index, result in ipairs(calculation.results) do
    local value = calculation.example.results[index]
    if value ~= nothing then
      wanted[result.field] = value
    end
  end
  return wanted
end

local names = 0
for _ in pairs(pourwright.calculations) do
  names = names + 1
end
check.that(names == #table_of, "the package has other calculations than the table")

for _, calculation in ipairs(table_of) do
  local name, given = calculation.name, arguments(calculation)
  local call = pourwright[name]
  local found, wanted = call(given), results(calculation)
  local _, only = next(wanted)
  if type(found) ~= "table" then
    found, wanted = { found }, { only }
  end
  check.that(check.same(found, wanted), name .. " gives " .. json.encode(found) .. ", not " .. json.encode(wanted))

  check.refused("unknown-field", "/no_such", call, with(given, "no_such", 1))
  check.refused("wrong-type", "", call, 5)
  for _, parameter in ipairs(calculation.parameters) do
    local field, path = parameter.field, "/" .. parameter.field
    local kind = parameter.kind
    if not parameter.optional then
      check.refused("missing-field", path, call, with(given, field, nil))
    end
    check.refused("wrong-type", path, call, with(given, field, true))
    if kind == "number" then
      for _, number in ipairs { 0 / 0, math.huge, -math.huge } do
        check.refused("not-finite", path, call, with(given, field, number))
      end
      check.refused("wrong-type", path, call, with(given, field, "1/4 tsp"))
      check.refused("out-of-range", path, call, with(given, field, -0x1.fffffffffffffp+1023))
    elseif kind == "count" then
      check.refused("wrong-type", path, call, with(given, field, 1.5))
      check.refused("not-finite", path, call, with(given, field, 0 / 0))
      check.refused("out-of-range", path, call, with(given, field, -1))
      check.refused("out-of-range", path, call, with(given, field, 2 ^ 32 - 1))
    elseif kind == "word" then
      check.refused("unknown-word", path, call, with(given, field, "no such word"))
      for _, word in ipairs(parameter.words) do
        local _, answer = pcall(call, with(given, field, word))
        check.that(type(answer) ~= "table" or answer.code ~= "unknown-word", word)
      end
    elseif kind == "text" then
      check.refused("wrong-type", path, call, with(given, field, "1 cup\0"))
      check.refused("not-utf8", path, call, with(given, field, "\255"))
      check.refused("too-large", path, call, with(given, field, ("x"):rep(5000)))
    elseif kind == "list" then
      check.refused("wrong-type", path .. "/1", call, with(given, field, { 1, "2" }))
      check.refused("not-finite", path .. "/0", call, with(given, field, { 0 / 0, 1, 1 }))
    else
      local row = {}
      for column = 1, #parameter.columns do
        row[column] = 0 / 0
      end
      check.refused("wrong-type", path .. "/0", call, with(given, field, { { 1 } , { 1 } }))
      check.refused("wrong-type", path .. "/0", call, with(given, field, { "1" }))
      check.refused("not-finite", path .. "/0/0", call, with(given, field, { row, row, row }))
    end
  end
end

-- Everything that is wrong comes at once.
local error_of = check.refused("wrong-type", "/voids", pourwright.piece_mass, { voids = "5 %", feed = true, size = 1 })
check.that(#error_of.faults == 3 and error_of.status == 6, tostring(error_of))
check.that(tostring(error_of):find("/voids: voids must be a number, not string.", 1, true), tostring(error_of))
error_of = check.refused("out-of-range", "/feed", pourwright.piece_mass,
  { cavity_volume_ml = 10, cold_density_g_per_ml = 1030, feed = 3 })
check.that(#error_of.faults == 2, tostring(error_of))

-- An uncaught error shows its faults.
check.that(error_of.code == error_of.faults[1].code and error_of.help == error_of.faults[1].help)

check.finish "table"
