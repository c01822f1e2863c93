# frozen_string_literal: true

# Every calculation of the table: its example to the bit, and each way in which an argument can be wrong.

require_relative "check"

table = JSON.parse(Check.text_of("core/schema/calculations.json"))["calculations"]
own = Pourwright.singleton_methods.sort - %i[answer_text calculate schema]
Check.that(own == table.map { |one| one["name"].to_sym }.sort, own.join(", "))

# A value of the table as Ruby has it: numbers are floats, unless they are counts.
def of_table(kind, value)
  case value
  when Array then value.map { |one| of_table(kind, one) }
  when Integer then kind == "count" ? value : value.to_f
  else value
  end
end

table.each do |calculation|
  example = calculation["example"]
  call = Pourwright.method(calculation["name"])
  given = calculation["parameters"].zip(example["arguments"]).reject { |_, argument| argument.nil? }
  given = given.to_h do |parameter, argument|
    argument = of_table(parameter["kind"], argument)
    argument = argument.each_slice(parameter["columns"].length).to_a if parameter["kind"] == "rows"
    [parameter["field"].to_sym, argument]
  end
  wanted = calculation["results"].zip(example["results"]).to_h do |result, value|
    [result["field"].to_sym, of_table(result["kind"] == "list" ? "count" : result["kind"], value)]
  end
  found = call.call(**given)
  wanted = wanted.values.first unless found.is_a?(Hash)
  Check.that(Check.same?(found, wanted), "#{calculation["name"]} gives #{found}, not #{wanted}")

  Check.raises(ArgumentError) { call.call(**given, no_such: 1) }
  calculation["parameters"].each do |parameter|
    field = parameter["field"].to_sym
    path = "/#{field}"
    with = ->(value) { call.call(**given, field => value) }
    Check.raises(ArgumentError) { call.call(**given.except(field)) } unless parameter["optional"]
    Check.refused(parameter["optional"] ? "wrong-type" : "missing-field", path) { with.(parameter["optional"] ? Object.new : nil) }
    Check.refused("wrong-type", path) { with.(Object.new) }
    case parameter["kind"]
    when "number"
      [Float::NAN, Float::INFINITY, -Float::INFINITY].each { |number| Check.refused("not-finite", path) { with.(number) } }
      Check.refused("wrong-type", path) { with.("1/4 tsp") }
      Check.refused("wrong-type", path) { with.(1i) }
      Check.refused("out-of-range", path) { with.(-Float::MAX) }
    when "count"
      Check.refused("wrong-type", path) { with.(1.5) }
      Check.refused("out-of-range", path) { with.(-1) }
      Check.refused("out-of-range", path) { with.(2**32 - 1) }
      Check.refused("out-of-range", path) { with.(10**40) }
    when "word"
      Check.refused("unknown-word", path) { with.("no such word") }
      parameter["words"].each do |word|
        with.(word.to_sym)
      rescue Pourwright::Error => error
        Check.that(error.code != "unknown-word", error.message)
      end
    when "text"
      Check.refused("wrong-type", path) { with.("1 cup\0") }
      Check.refused("not-utf8", path) { with.("\xff") }
      Check.refused("not-utf8", path) { with.("\xff".b) }
      Check.refused("not-utf8", path) { with.("1 cup".encode("UTF-16LE").force_encoding("UTF-16LE") + "\x00\xd8".dup.force_encoding("UTF-16LE")) }
      Check.refused("too-large", path) { with.("x" * 5000) }
    when "list"
      Check.refused("wrong-type", "#{path}/1") { with.([1, "2"]) }
      Check.refused("not-finite", "#{path}/0") { with.([Float::NAN, 1, 1]) }
    else
      row = [Float::NAN] * parameter["columns"].length
      Check.refused("wrong-type", "#{path}/0") { with.([[1], [1]]) }
      Check.refused("wrong-type", "#{path}/0") { with.(["1"]) }
      Check.refused("wrong-type", "#{path}/0/0") { with.([["1"] * row.length]) }
      Check.refused("not-finite", "#{path}/0/0") { with.([row, row, row]) }
    end
  end
end

# Everything that is wrong comes at once.
error = Check.refused("out-of-range", "/feed") { Pourwright.piece_mass(cavity_volume_ml: 10, cold_density_g_per_ml: 1030, feed: 3) }
Check.that(error.faults.length == 2 && error.status == 6 && error.is_a?(ArgumentError))
Check.that(error.message == error.faults.join("\n") && error.code == error.faults.first.code && !error.help.empty?, error.message)
error = Check.refused("wrong-type", "/voids") { Pourwright.piece_mass(cavity_volume_ml: 10, cold_density_g_per_ml: "1", voids: true) }
Check.that(error.faults.map(&:path) == %w[/cold_density_g_per_ml /voids], error.message)

# Numbers of other kinds.
[2, 2r, 2.0].each { |two| Check.that(Pourwright.mass_of_volume(volume_ml: two, density_g_per_ml: 1.5).eql?(3.0)) }

Check.finish("table")
