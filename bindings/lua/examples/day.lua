--- Plans a day: luajit day.lua BOOK.json ORDERS.json prints the bench sheet, or all faults of the two files.

local pourwright = require "pourwright"

local function text_of(path)
  local file = assert(io.open(path, "rb"))
  local text = file:read "*a"
  file:close()
  return text
end

--- What `read` gives; prints all faults of `path` and ends where it is refused.
local function of(path, read)
  local good, found = pcall(read, text_of(path))
  if good then
    return found
  elseif type(found) ~= "table" then
    error(found, 0)
  end
  for _, fault in ipairs(found.faults) do
    io.stderr:write(path, fault.path, ": ", fault.message, " ", fault.help, " [", fault.code, "]\n")
  end
  os.exit(1)
end

if #arg ~= 2 then
  io.stderr:write("Usage: luajit day.lua BOOK.json ORDERS.json\n")
  os.exit(2)
end
local book = of(arg[1], pourwright.book)
local plan = of(arg[2], function(orders)
  return book:plan(orders)
end)
print(plan:sheet())
