rockspec_format = "3.0"
package = "pourwright"
version = "0.2.0-1"
source = {
  url = "file://.",
}
description = {
  summary = "Recipe and batch math for workshops that pour soft plastic to order",
  detailed = [[
Batch math for small workshops that pour soft-plastic fishing lures to order: doses, salt, shots, heat, sink rates, and the
plan of a day. LuaJIT calls the C library by its foreign function interface; no compiler is needed.]],
  license = "MIT OR Apache-2.0",
  labels = { "ffi", "units" },
}
dependencies = {
  "lua ~> 5.1", -- LuaJIT: the package needs its `ffi`
}
build = {
  type = "builtin",
  modules = {
    ["pourwright"] = "src/pourwright.lua",
    ["pourwright.calculations"] = "src/pourwright/calculations.lua",
    ["pourwright.call"] = "src/pourwright/call.lua",
    ["pourwright.declarations"] = "src/pourwright/declarations.lua",
    ["pourwright.document"] = "src/pourwright/document.lua",
    ["pourwright.fault"] = "src/pourwright/fault.lua",
    ["pourwright.json"] = "src/pourwright/json.lua",
    ["pourwright.library"] = "src/pourwright/library.lua",
  },
}
