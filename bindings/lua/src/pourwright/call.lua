--- Calculations on plain numbers: a table of parameters becomes the arguments of a call to C, its results a table.

local ffi = require "ffi"
local fault = require "pourwright.fault"
local library = require "pourwright.library"

local call = {}

-- An omitted number in C.
local OMITTED = -0x1.fffffffffffffp+1023

-- The largest number means an omitted count.
local MOST = 2 ^ 32 - 2

local read = {}

local function wrong_type(faults, path, wanted, value)
  local message = ("%s must be %s, not %s."):format(path:sub(2), wanted, type(value))
  faults[#faults + 1] = fault.new("wrong-type", path, message, "Pass " .. wanted .. ".")
end

local function out_of_range(faults, path, message, help)
  faults[#faults + 1] = fault.new("out-of-range", path, message, help)
end

function read.number(value, path, faults)
  if type(value) ~= "number" then
    return wrong_type(faults, path, "a number", value)
  end
  if value == OMITTED then
    return out_of_range(faults, path, ("%s is %g, which is out of range."):format(path:sub(2), value), "Check the number.")
  end
  return value
end

function read.count(value, path, faults)
  if type(value) ~= "number" then
    return wrong_type(faults, path, "a whole number", value)
  end
  if value ~= value or value == math.huge or value == -math.huge then
    local message = path:sub(2) .. " is not a finite number."
    faults[#faults + 1] = fault.new("not-finite", path, message, "Check the calculation that made it.")
  elseif value % 1 ~= 0 then
    local message = ("%s is %.17g; it must be a whole number."):format(path:sub(2), value)
    faults[#faults + 1] = fault.new("wrong-type", path, message, "Give a whole number.")
  elseif value < 0 or value > MOST then
    local help = ("Give a whole number from 0 to %.0f."):format(MOST)
    out_of_range(faults, path, ("%s is %.17g, which is out of range."):format(path:sub(2), value), help)
  else
    return value
  end
end

function read.text(value, path, faults)
  if type(value) ~= "string" then
    return wrong_type(faults, path, "a text", value)
  end
  if value:find("%z") then
    local message = path:sub(2) .. " must not have a NUL character."
    faults[#faults + 1] = fault.new("wrong-type", path, message, "Remove it.")
    return nil
  end
  return value
end

function read.word(value, path, faults, field)
  if type(value) ~= "string" then
    return wrong_type(faults, path, "a word", value)
  end
  for place, word in ipairs(field.words) do
    if word == value then
      return place
    end
  end
  local message = ("%q is not a word for %s."):format(value, path:sub(2))
  faults[#faults + 1] = fault.new("unknown-word", path, message, "Known: " .. table.concat(field.words, ", ") .. ".")
end

function read.list(value, path, faults)
  if type(value) ~= "table" then
    return wrong_type(faults, path, "a list of numbers", value)
  end
  local made = ffi.new("double[?]", #value)
  for index = 1, #value do
    made[index - 1] = read.number(value[index], path .. "/" .. index - 1, faults) or 0
  end
  return made, #value
end

function read.rows(value, path, faults, field)
  if type(value) ~= "table" then
    return wrong_type(faults, path, "a list of rows of numbers", value)
  end
  local made = ffi.new(field.item .. "[?]", #value)
  local numbers = ffi.cast("double *", made)
  for index = 1, #value do
    local row, row_path = value[index], path .. "/" .. index - 1
    if type(row) ~= "table" or #row ~= field.columns then
      wrong_type(faults, row_path, field.columns .. " numbers", row)
    else
      for column = 1, field.columns do
        local number = read.number(row[column], row_path .. "/" .. column - 1, faults)
        numbers[(index - 1) * field.columns + column - 1] = number or 0
      end
    end
  end
  return made, #value
end

local omitted = {
  number = OMITTED,
  count = library.POUR_OMITTED_COUNT,
  word = 0,
}

local made_of = {
  number = function(value)
    return value == value and value or nil
  end,
  count = function(value)
    return value ~= library.POUR_OMITTED_COUNT and value or nil
  end,
  word = function(value, field)
    return field.words[value]
  end,
  list = function(value, field)
    local list = {}
    for index = 1, field.count do
      list[index] = value[index - 1]
    end
    return list
  end,
}

local cell_of = { number = "double[1]", count = "uint32_t[1]", word = "int32_t[1]" }

--- Parameters that there are not.
local function unknown(fields, given, faults)
  local known = {}
  for index, field in ipairs(fields) do
    known[field[1]], known[index] = true, field[1]
  end
  local names = {}
  for name in pairs(given) do
    if type(name) ~= "string" or not known[name] then
      names[#names + 1] = tostring(name)
    end
  end
  table.sort(names)
  for _, name in ipairs(names) do
    local message = ("There is no parameter %q."):format(name)
    faults[#faults + 1] = fault.new("unknown-field", "/" .. name, message, "Known: " .. table.concat(known, ", ") .. ".")
  end
end

--- The function of the calculation `name`. Where `structs.input`, its arguments are in a struct; where `structs.result`, its
-- results are.
function call.of(name, fields, results, structs)
  local symbol = "pour_" .. name
  local input_type, result_type = symbol .. "_input", symbol .. "_result[1]"
  if not structs.result then
    result_type = cell_of[results[1][2]]
  end
  return function(given)
    if type(given) ~= "table" then
      local message = ("%s takes a table of its parameters, not %s."):format(name, type(given))
      fault.raise(library.POUR_REFUSED, { fault.new("wrong-type", "", message, "Name the parameters: " .. name .. " { ... }.") })
    end
    local faults = {}
    unknown(fields, given, faults)
    local input = structs.input and ffi.new(input_type)
    if input then
      input.size = ffi.sizeof(input)
    end
    -- `kept` holds what C reads until the call is over.
    local arguments, count, kept = {}, 0, {}
    local function pass(member, value)
      if input then
        input[member] = value
      else
        count = count + 1
        arguments[count] = value
      end
    end
    for _, field in ipairs(fields) do
      local member, kind, value, length = field[1], field[2], given[field[1]], nil
      if value ~= nil then
        value, length = read[kind](value, "/" .. member, faults, field)
      end
      if value == nil then
        value = omitted[kind]
      end
      kept[#kept + 1] = value
      pass(member, value)
      if field.count then
        pass(field.count, length or 0)
      end
    end
    if #faults > 0 then
      fault.raise(library.POUR_REFUSED, faults)
    end
    if input then
      count = 1
      arguments[1] = input
    end
    local found = ffi.new(result_type)
    local failed = ffi.new "pour_error *[1]"
    arguments[count + 1], arguments[count + 2] = found, failed
    local status = library[symbol](unpack(arguments, 1, count + 2))
    if status ~= library.POUR_OK then
      fault.raise_made(status, failed[0])
    end
    if not structs.result then
      return made_of[results[1][2]](found[0], results[1])
    end
    local made = {}
    for _, result in ipairs(results) do
      made[result[1]] = made_of[result[2]](found[0][result[1]], result)
    end
    return made
  end
end

return call
