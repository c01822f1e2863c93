# frozen_string_literal: true

# Every request of tests/vectors, as text and as Ruby's own values: the answers are the same, to the bit.

require_relative "check"

requests = Check.text_of("tests/vectors/requests.jsonl").delete_suffix("\n").split("\n", -1)
answers = Check.text_of("tests/vectors/answers.jsonl").delete_suffix("\n").split("\n", -1)
Check.that(requests.length == answers.length && requests.length > 200)

# What stands for a JSON text: one that is JSON, without names twice and numbers that a Float does not hold.
def held(text, answer)
  return if answer.include?('"code":"duplicate-') || answer.include?('"code":"not-json"') || text.match?(/\d{16}/)

  value = JSON.parse(text, max_nesting: 0)
  value if value.is_a?(Hash)
rescue JSON::ParserError
  nil
end

as_values = 0
requests.zip(answers).each.with_index(1) do |(request, answer), line|
  found = Pourwright.answer_text(request)
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
Check.that(as_values > 0.9 * requests.length, "#{as_values} of #{requests.length}")

Check.finish("vectors")
