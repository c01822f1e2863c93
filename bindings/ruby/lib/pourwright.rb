# frozen_string_literal: true

# Recipe-formula and batch math for workshops that pour soft plastic to order.
#
#     Pourwright.piece_mass(cavity_volume_ml: 9.5, cold_density_g_per_ml: 1.12)[:piece_mass_g]
#     Pourwright.calculate("convert", amount: "1 1/4 cup", to: "mL")["value"]
#     puts Pourwright::Book.new(book_json).plan(orders_json).sheet
#
# A refused call raises a Pourwright::Error with all faults, each with code, path, message and help.
#
# Hot plastisol sticks and burns deep, its fumes need ventilation, a drop of water in a mold erupts. Plans and answers carry
# cautions: show them to the person who pours.
module Pourwright
end

require_relative "pourwright/error"
require_relative "pourwright/library"
require_relative "pourwright/calculations"
require_relative "pourwright/document"
require_relative "pourwright/open"
