--- JSON text and the tables that stand for it.
--
-- An object is a table with texts as its keys, an array a table with the keys 1 to n. An empty table is an object; for an
-- empty array write `json.array {}`. A null is `json.null`. Numbers keep their bits both ways.

local fault = require "pourwright.fault"
local library = require "pourwright.library"

local json = {}

local Array = { __name = "array" }

--- A null: a value of its own, as a nil leaves its field out.
json.null = setmetatable({}, {
  __tostring = function()
    return "null"
  end,
})

--- Marks a table as an array, for one that is empty.
function json.array(list)
  return setmetatable(list, Array)
end

-- Beyond this a table most likely holds itself; the library reads documents up to 128 levels.
local DEEPEST = 200

local function refuse(code, path, message, help)
  fault.raise(library.POUR_REFUSED, { fault.new(code, path, message, help) })
end

local SHORT = { ['"'] = '\\"', ["\\"] = "\\\\", ["\n"] = "\\n", ["\r"] = "\\r", ["\t"] = "\\t" }

local function escaped(letter)
  return SHORT[letter] or ("\\u%04x"):format(letter:byte())
end

local function quoted(text)
  return '"' .. text:gsub('[%z\1-\31"\\]', escaped) .. '"'
end

--- A step of a path, as RFC 6901 writes it.
local function step(path, name)
  return path .. "/" .. tostring(name):gsub("~", "~0"):gsub("/", "~1")
end

local write

local function write_array(list, path, depth)
  local items = {}
  for index = 1, #list do
    items[index] = write(list[index], step(path, index - 1), depth)
  end
  return "[" .. table.concat(items, ",") .. "]"
end

local function write_object(object, path, depth)
  local names = {}
  for name in pairs(object) do
    if type(name) ~= "string" then
      local message = ("A %s cannot be a name next to others."):format(type(name))
      refuse("wrong-type", path, message, "Use texts as keys, or 1 to n for an array.")
    end
    names[#names + 1] = name
  end
  table.sort(names)
  local fields = {}
  for index, name in ipairs(names) do
    fields[index] = quoted(name) .. ":" .. write(object[name], step(path, name), depth)
  end
  return "{" .. table.concat(fields, ",") .. "}"
end

--- Whether a table has the keys 1 to n, and no others.
local function is_array(value)
  if getmetatable(value) == Array then
    return true
  end
  local count = 0
  for _ in pairs(value) do
    count = count + 1
  end
  return count > 0 and count == #value
end

function write(value, path, depth)
  local kind = type(value)
  if value == json.null then
    return "null"
  elseif kind == "string" then
    return quoted(value)
  elseif kind == "boolean" then
    return tostring(value)
  elseif kind == "number" then
    if value ~= value or value == math.huge or value == -math.huge then
      refuse("not-finite", path, "A number of the document is not finite.", "Check the calculation that made it.")
    end
    return ("%.17g"):format(value)
  elseif kind ~= "table" then
    refuse("wrong-type", path, ("A %s cannot be part of a document."):format(kind), "Use texts, numbers, booleans and tables.")
  elseif depth > DEEPEST then
    refuse("wrong-type", path, ("The document has more than %d levels."):format(DEEPEST), "Does a table hold itself?")
  elseif is_array(value) then
    return write_array(value, path, depth + 1)
  end
  return write_object(value, path, depth + 1)
end

--- The JSON text of a value.
function json.encode(value)
  return write(value, "", 0)
end

local LETTERS = { b = "\b", f = "\f", n = "\n", r = "\r", t = "\t", ['"'] = '"', ["\\"] = "\\", ["/"] = "/" }

--- A code point in UTF-8.
local function utf8(code)
  if code < 0x80 then
    return string.char(code)
  elseif code < 0x800 then
    return string.char(0xc0 + math.floor(code / 0x40), 0x80 + code % 0x40)
  elseif code < 0x10000 then
    return string.char(0xe0 + math.floor(code / 0x1000), 0x80 + math.floor(code / 0x40) % 0x40, 0x80 + code % 0x40)
  end
  return string.char(
    0xf0 + math.floor(code / 0x40000),
    0x80 + math.floor(code / 0x1000) % 0x40,
    0x80 + math.floor(code / 0x40) % 0x40,
    0x80 + code % 0x40
  )
end

local function not_json(at)
  local message = ("The text is not JSON from byte %d on."):format(at - 1)
  refuse("not-json", "", message, "Check the text before it.")
end

local function after_space(text, at)
  return text:find("[^ \t\r\n]", at) or #text + 1
end

local function read_text(text, at)
  local parts, from = {}, at + 1
  while true do
    local stop = text:find('[%z\1-\31"\\]', from)
    local letter = stop and text:sub(stop, stop)
    if letter ~= '"' and letter ~= "\\" then
      not_json(stop or #text + 1)
    end
    parts[#parts + 1] = text:sub(from, stop - 1)
    if letter == '"' then
      return table.concat(parts), stop + 1
    end
    local escape = text:sub(stop + 1, stop + 1)
    from = stop + 2
    if escape == "u" then
      local code = tonumber(text:match("^%x%x%x%x", from) or not_json(from), 16)
      from = from + 4
      if code >= 0xd800 and code < 0xdc00 then
        local low = tonumber(text:match("^\\u(%x%x%x%x)", from) or not_json(from), 16)
        if low < 0xdc00 or low > 0xdfff then
          not_json(from)
        end
        code = 0x10000 + (code - 0xd800) * 0x400 + low - 0xdc00
        from = from + 6
      elseif code >= 0xdc00 and code < 0xe000 then
        not_json(from)
      end
      parts[#parts + 1] = utf8(code)
    else
      parts[#parts + 1] = LETTERS[escape] or not_json(stop)
    end
  end
end

local WORDS = { ["true"] = true, ["false"] = false, null = json.null }

local function read_number(text, at)
  local stop = select(2, text:find("^-?%d+", at)) or not_json(at)
  if text:find("^-?0%d", at) then
    not_json(at)
  end
  stop = select(2, text:find("^%.%d+", stop + 1)) or stop
  stop = select(2, text:find("^[eE][+-]?%d+", stop + 1)) or stop
  return tonumber(text:sub(at, stop)), stop + 1
end

local read

--- What is in brackets: `one` reads an item, after which `close` or a comma follows.
local function read_items(text, at, close, one)
  at = after_space(text, at + 1)
  if text:sub(at, at) == close then
    return at + 1
  end
  while true do
    at = after_space(text, one(at))
    local sign = text:sub(at, at)
    if sign == close then
      return at + 1
    elseif sign ~= "," then
      not_json(at)
    end
    at = after_space(text, at + 1)
  end
end

function read(text, at)
  local sign = text:sub(at, at)
  if sign == '"' then
    return read_text(text, at)
  elseif sign == "{" then
    local object = {}
    local stop = read_items(text, at, "}", function(from)
      if text:sub(from, from) ~= '"' then
        not_json(from)
      end
      local name, colon = read_text(text, from)
      colon = after_space(text, colon)
      if text:sub(colon, colon) ~= ":" then
        not_json(colon)
      end
      local value, rest = read(text, after_space(text, colon + 1))
      object[name] = value
      return rest
    end)
    return object, stop
  elseif sign == "[" then
    local list = json.array {}
    local stop = read_items(text, at, "]", function(from)
      local value, rest = read(text, from)
      list[#list + 1] = value
      return rest
    end)
    return list, stop
  end
  local word = text:match("^%l+", at)
  if word then
    if WORDS[word] == nil then
      not_json(at)
    end
    return WORDS[word], at + #word
  end
  return read_number(text, at)
end

--- The value of a JSON text. Raises an error where it is not JSON.
function json.decode(text)
  local value, at = read(text, after_space(text, 1))
  at = after_space(text, at)
  if at <= #text then
    not_json(at)
  end
  return value
end

return json
