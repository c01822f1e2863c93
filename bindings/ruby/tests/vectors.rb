# frozen_string_literal: true

# Every vector of tests/vectors: calls on plain numbers, and requests as text and as Ruby's own values: the answers are the
# same, to the bit. Where POURWRIGHT_ANSWERS names a folder, the answers are written there: tests/doors.

require_relative "check"

def write_answers(name, answers)
  folder = ENV.fetch("POURWRIGHT_ANSWERS", nil)
  File.write(File.join(folder, "ruby.#{name}.jsonl"), answers.join("\n") + "\n") if folder
end

NOT_FINITE = { "NaN" => Float::NAN, "Infinity" => Float::INFINITY, "-Infinity" => -Float::INFINITY }.freeze

# A value of a call as Ruby has it: what is no number in JSON is written as a text.
def plain(kind, value)
  case value
  when Array then value.map { |item| plain(kind, item) }
  when String then %w[text word].include?(kind) ? value : NOT_FINITE.fetch(value)
  else value
  end
end

calculations = JSON.parse(Check.text_of("core/schema/calculations.json"))["calculations"].to_h { |one| [one["name"], one] }

# What the library answers to a call, as the vectors have it.
answer_to = lambda do |call|
  calculation = calculations[call["call"]]
  kinds = calculation["parameters"].to_h { |parameter| [parameter["field"], parameter["kind"]] }
  given = call["given"].to_h { |field, value| [field.to_sym, plain(kinds[field], value)] }
  found = Pourwright.public_send(call["call"], **given)
  found = { calculation["results"][0]["field"] => found } unless found.is_a?(Hash)
  { "results" => found.transform_keys(&:to_s) }
rescue Pourwright::Error => error
  { "faults" => error.faults.map { |fault| { "code" => fault.code, "path" => fault.path } } }
end

calls = Check.text_of("tests/vectors/calls.jsonl").lines
Check.that(calls.length > 600)
write_answers("calls", calls.map.with_index(1) do |line, index|
  call = JSON.parse(line)
  answer = answer_to.(call)
  same = Check.same?(answer, call.slice("results", "faults"))
  Check.that(same, "calls.jsonl:#{index}: #{call["call"]}, #{call["case"]} gives #{answer}")
  JSON.generate(answer)
end)

requests = Check.text_of("tests/vectors/requests.jsonl").delete_suffix("\n").split("\n", -1)
answers = Check.text_of("tests/vectors/answers.jsonl").delete_suffix("\n").split("\n", -1)
Check.that(requests.length == answers.length && requests.length > 400)

# What stands for a JSON text: one that is JSON, without names twice and numbers that a Float does not hold.
def held(text, answer)
  return if answer.include?('"code":"duplicate-') || answer.include?('"code":"not-json"') || text.match?(/\d{16}/)

  value = JSON.parse(text, max_nesting: 0)
  value if value.is_a?(Hash)
rescue JSON::ParserError
  nil
end

as_values = 0
texts = []
requests.zip(answers).each.with_index(1) do |(request, answer), line|
  texts << (found = Pourwright.answer_text(request))
  Check.that(found == answer, "line #{line}\n  #{found}\n  not\n  #{answer}")

  value = held(request, answer)
  next if value.nil?

  as_values += 1
  result = begin
    { "result" => Pourwright.calculate(value) }
  rescue Pourwright::Error => error
    { "faults" => error.faults.map { |fault| fault.to_h.transform_keys(&:to_s) } }
  end
  Check.that(Check.same?(result, JSON.parse(answer, max_nesting: 0)), "line #{line} as values: #{result}")
end
Check.that(as_values > 0.85 * requests.length, "#{as_values} of #{requests.length}")

write_answers("requests", texts)

Check.finish("vectors")
