--- What the tests share.

local ffi = require "ffi"

local check = { failures = 0, count = 0 }

--- The repository.
check.root = assert(os.getenv "POURWRIGHT_ROOT")

function check.text_of(path)
  local file = assert(io.open(check.root .. "/" .. path, "rb"))
  local text = file:read "*a"
  file:close()
  return text
end

--- Counts, and prints what does not hold.
function check.that(holds, what)
  check.count = check.count + 1
  if not holds then
    check.failures = check.failures + 1
    local at = debug.getinfo(2, "Sl")
    io.stderr:write(at.short_src, ":", at.currentline, ": ", tostring(what or "does not hold"), "\n")
  end
end

-- Once: each such type that is written takes a place of the few that LuaJIT has.
local Both = ffi.typeof "union { double number; uint64_t bits; }"

--- The bits of a number.
local function bits(number)
  return Both(number).bits
end

--- Whether two values are the same, numbers by their bits.
function check.same(one, other)
  if type(one) == "number" and type(other) == "number" then
    return bits(one) == bits(other)
  elseif type(one) ~= "table" or type(other) ~= "table" or one == other then
    return one == other
  end
  for name, value in pairs(one) do
    if not check.same(value, other[name]) then
      return false
    end
  end
  for name in pairs(other) do
    if one[name] == nil then
      return false
    end
  end
  return true
end

--- Checks that a call is refused with this fault among its faults; gives the error.
function check.refused(code, path, call, ...)
  local good, found = pcall(call, ...)
  local all = type(found) == "table" and found.faults or {}
  local right = false
  for _, fault in ipairs(all) do
    right = right or (fault.code == code and fault.path == path and fault.message ~= "" and fault.help ~= "")
  end
  check.count = check.count + 1
  if good or not right then
    check.failures = check.failures + 1
    local at = debug.getinfo(2, "Sl")
    local what = good and "not refused" or tostring(found)
    io.stderr:write(at.short_src, ":", at.currentline, ": no ", code, " at ", path, ": ", what, "\n")
  end
  return found
end

--- Ends the test.
function check.finish(name)
  if check.failures > 0 then
    io.stderr:write(name, ": ", check.failures, " of ", check.count, " checks failed\n")
    os.exit(1)
  end
  print(("%s: %d checks"):format(name, check.count))
end

return check
