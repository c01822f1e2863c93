--- pourwright: recipe-formula and batch math for workshops that pour soft plastic to order.
--
--     local pourwright = require "pourwright"
--     pourwright.piece_mass { cavity_volume_ml = 9.5, cold_density_g_per_ml = 1.12 }.piece_mass_g
--     pourwright.calculate { calculate = "convert", amount = "1 1/4 cup", to = "mL" }.value
--     print(pourwright.book(book_json):plan(orders_json):sheet())
--
-- A refused call raises an error, a table with `code`, `path`, `message` and `help` of its first fault, all `faults`, and the
-- `status` of the C library; `tostring` gives all faults as text.
--
-- Documents are JSON text, or tables that stand for it: see `pourwright.json`.
--
-- Hot plastisol sticks and burns deep, its fumes need ventilation, a drop of water in a mold erupts. Plans and answers carry
-- cautions: show them to the person who pours.

local ffi = require "ffi"
local calculations = require "pourwright.calculations"
local document = require "pourwright.document"
local json = require "pourwright.json"
local library = require "pourwright.library"

local pourwright = {}

for name, calculation in pairs(calculations) do
  pourwright[name] = calculation
end

--- The version of the C library, such as "0.1.0".
pourwright.version = ffi.string(library.pour_version())

--- The calculations on plain numbers, by name.
pourwright.calculations = calculations

--- Tables to JSON text and back: `encode`, `decode`, `null`, `array`.
pourwright.json = json

pourwright.answer_text = document.answer_text
pourwright.calculate = document.calculate
pourwright.schema = document.schema
pourwright.book = document.book
pourwright.plan = document.plan

return pourwright
