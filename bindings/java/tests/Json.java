import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** JSON for the tests: numbers with a point or an exponent are {@code Double}, others {@code Long}. */
final class Json {
    private final String text;
    private int at;

    private Json(String text) {
        this.text = text;
    }

    static Object read(String text) {
        Json json = new Json(text);
        Object value = json.value();
        if (json.at != text.length()) {
            throw new IllegalArgumentException(text);
        }
        return value;
    }

    static String write(Object value) {
        if (value instanceof Map<?, ?> map) {
            List<String> fields = new ArrayList<>();
            map.forEach((name, one) -> fields.add(write(name) + ":" + write(one)));
            return "{" + String.join(",", fields) + "}";
        }
        if (value instanceof List<?> list) {
            return "[" + String.join(",", list.stream().map(Json::write).toList()) + "]";
        }
        if (value instanceof String string) {
            return "\"" + string.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
        }
        return String.valueOf(value);
    }

    private Object value() {
        switch (text.charAt(at)) {
            case '{':
                Map<String, Object> map = new LinkedHashMap<>();
                for (at++; text.charAt(at) != '}'; skipComma()) {
                    String name = string();
                    at++;
                    map.put(name, value());
                }
                at++;
                return map;
            case '[':
                List<Object> list = new ArrayList<>();
                for (at++; text.charAt(at) != ']'; skipComma()) {
                    list.add(value());
                }
                at++;
                return list;
            case '"':
                return string();
            case 'n':
                at += 4;
                return null;
            case 't':
                at += 4;
                return true;
            case 'f':
                at += 5;
                return false;
            default:
                int start = at;
                while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
                    at++;
                }
                String number = text.substring(start, at);
                return number.matches("-?\\d+") ? (Object) Long.valueOf(number) : (Object) Double.valueOf(number);
        }
    }

    private void skipComma() {
        if (text.charAt(at) == ',') {
            at++;
        }
    }

    private String string() {
        StringBuilder made = new StringBuilder();
        for (at++; text.charAt(at) != '"'; at++) {
            char letter = text.charAt(at);
            if (letter == '\\') {
                letter = text.charAt(++at);
                if (letter == 'u') {
                    letter = (char) Integer.parseInt(text.substring(at + 1, at + 5), 16);
                    at += 4;
                } else if ("bfnrt".indexOf(letter) >= 0) {
                    letter = "\b\f\n\r\t".charAt("bfnrt".indexOf(letter));
                }
            }
            made.append(letter);
        }
        at++;
        return made.toString();
    }
}
