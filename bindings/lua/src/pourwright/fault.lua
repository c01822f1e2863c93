--- Errors: tables that carry all faults of a call.

local ffi = require "ffi"
local library = require "pourwright.library"

local fault = {}

local Error = {}
Error.__index = Error

--- All faults, one a line.
function Error:__tostring()
  local lines = {}
  for index, one in ipairs(self.faults) do
    local place = one.path == "" and "" or one.path .. ": "
    lines[index] = ("%s%s %s [%s]"):format(place, one.message, one.help, one.code)
  end
  return table.concat(lines, "\n")
end

--- One fault.
function fault.new(code, path, message, help)
  return { code = code, path = path, message = message, help = help }
end

--- Raises these faults as one error.
function fault.raise(status, faults)
  local first = faults[1]
  error(setmetatable({
    status = status,
    faults = faults,
    code = first.code,
    path = first.path,
    message = first.message,
    help = first.help,
  }, Error), 0)
end

--- Raises the error of a call that returned `status`, and frees it.
function fault.raise_made(status, made)
  local faults = {}
  for index = 0, tonumber(library.pour_error_count(made)) - 1 do
    faults[index + 1] = fault.new(
      ffi.string(library.pour_error_code(made, index)),
      ffi.string(library.pour_error_path(made, index)),
      ffi.string(library.pour_error_message(made, index)),
      ffi.string(library.pour_error_help(made, index))
    )
  end
  library.pour_error_free(made)
  fault.raise(status, faults)
end

--- Does a call whose last parameter is the error, and raises that.
function fault.checked(call, ...)
  local failed = ffi.new "pour_error *[1]"
  local arguments, count = { ... }, select("#", ...)
  arguments[count + 1] = failed
  local status = call(unpack(arguments, 1, count + 1))
  if status ~= library.POUR_OK then
    fault.raise_made(status, failed[0])
  end
end

return fault
