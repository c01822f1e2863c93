import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.Fault;
import pourwright.Pour;
import pourwright.PourwrightException;

/** Every vector of tests/vectors, calls on plain numbers and requests as text: the answers are the same, to the bit. */
public final class Vectors {
    private Vectors() {}

    public static void main(String[] arguments) throws Exception {
        calls();
        requests();
        Check.finish("vectors");
    }

    /** A value of a call as Java has it: what is no number in JSON is written as a text. */
    private static Object plain(String kind, Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(item -> plain(kind, item)).toList();
        }
        boolean isNumber = !kind.equals("text") && !kind.equals("word");
        return isNumber && value instanceof String text ? (Object) Double.valueOf(text) : value;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> object(Object value) {
        return (Map<String, Object>) value;
    }

    private static void calls() throws Exception {
        Map<String, Map<String, String>> kinds = new LinkedHashMap<>();
        for (Object one : (List<?>) object(Json.read(compact(Check.textOf("core/schema/calculations.json")))).get("calculations")) {
            Map<String, String> of = new LinkedHashMap<>();
            for (Object parameter : (List<?>) object(one).get("parameters")) {
                of.put((String) object(parameter).get("field"), (String) object(parameter).get("kind"));
            }
            kinds.put((String) object(one).get("name"), of);
        }
        Check.that(kinds.keySet().equals(Pour.calculations()), "the package has other calculations than the table");
        List<String> answers = new ArrayList<>();
        for (String line : Check.lines("tests/vectors/calls.jsonl")) {
            Map<String, Object> call = object(Json.read(line));
            String name = (String) call.get("call");
            Map<String, Object> given = object(call.get("given"));
            given.replaceAll((field, value) -> plain(kinds.get(name).get(field), value));
            Map<String, Object> answer = new LinkedHashMap<>();
            try {
                answer.put("results", Pour.calculate(name, given));
            } catch (PourwrightException error) {
                List<Object> faults = new ArrayList<>();
                for (Fault fault : error.faults()) {
                    Map<String, Object> one = new LinkedHashMap<>();
                    one.put("code", fault.code());
                    one.put("path", fault.path());
                    faults.add(one);
                }
                answer.put("faults", faults);
            }
            call.keySet().retainAll(List.of("results", "faults"));
            answers.add(Json.write(answer));
            // Doubles are equal if their bits are.
            Check.that(call.equals(answer), "calls.jsonl:" + answers.size() + ": " + line + " gives " + Json.write(answer));
        }
        Check.that(answers.size() > 600, answers.size() + " calls");
        Check.writeAnswers("calls", answers);
    }

    private static void requests() throws Exception {
        List<String> requests = Check.lines("tests/vectors/requests.jsonl"), wanted = Check.lines("tests/vectors/answers.jsonl");
        Check.that(requests.size() == wanted.size() && requests.size() > 400, requests.size() + " requests");
        List<String> answers = new ArrayList<>();
        for (int index = 0; index < requests.size(); index++) {
            String found = Pour.answer(requests.get(index));
            answers.add(found);
            Check.that(found.equals(wanted.get(index)), "line " + (index + 1) + "\n  " + found + "\n  not\n  " + wanted.get(index));
        }
        Check.writeAnswers("requests", answers);
    }

    /** JSON without the spaces between its parts. */
    private static String compact(String json) {
        StringBuilder made = new StringBuilder();
        boolean isText = false;
        for (int at = 0; at < json.length(); at++) {
            char letter = json.charAt(at);
            if (isText && letter == '\\') {
                made.append(letter).append(json.charAt(++at));
                continue;
            }
            isText ^= letter == '"';
            if (isText || !Character.isWhitespace(letter)) {
                made.append(letter);
            }
        }
        return made.toString();
    }
}
