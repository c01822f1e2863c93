--- The C library. POURWRIGHT_LIBRARY names its file; without it the system's search finds it.

local ffi = require "ffi"

ffi.cdef(require "pourwright.declarations")

local library = ffi.load(os.getenv "POURWRIGHT_LIBRARY" or "pourwright")

if library.pour_abi_version() ~= library.POUR_ABI_VERSION then
  error("The pourwright library is of another version than this package.")
end

return library
