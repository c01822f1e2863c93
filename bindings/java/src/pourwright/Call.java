package pourwright;

import com.sun.jna.Memory;
import com.sun.jna.Native;
import com.sun.jna.Pointer;
import java.lang.ref.Reference;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** A call of a calculation on plain numbers: arguments by name become those of C, its results a map. */
final class Call {
    /** An omitted number in C. */
    private static final double OMITTED = -Double.MAX_VALUE;

    /** An omitted count. */
    private static final long OMITTED_COUNT = Table.constant("POUR_OMITTED_COUNT");

    private final List<Fault> faults = new ArrayList<>();

    /** What C takes, one after the other: Double, Integer, Pointer (null too), or Long for a length. */
    private final List<Object> members = new ArrayList<>();

    static Map<String, Object> of(String name, Map<String, ?> given) {
        Table.Calculation calculation = Table.calculations().get(name);
        if (calculation == null) {
            String known = String.join(", ", Table.calculations().keySet());
            throw refused(List.of(new Fault("unknown-name", "", "There is no calculation \"" + name + "\".", "Known: " + known + ".")));
        }
        return new Call().of(name, calculation, given);
    }

    private static PourwrightException refused(List<Fault> faults) {
        return new PourwrightException((int) Table.constant("POUR_REFUSED"), faults);
    }

    private Map<String, Object> of(String name, Table.Calculation calculation, Map<String, ?> given) {
        unknown(calculation, given);
        for (Table.Field field : calculation.parameters()) {
            read(field, given.get(field.name()));
        }
        if (!faults.isEmpty()) {
            throw refused(faults);
        }
        List<Object> cells = new ArrayList<>();
        for (Table.Field result : calculation.results()) {
            int count = result.kind().equals("list") ? result.columns() : 1;
            for (int index = 0; index < count; index++) {
                cells.add(result.kind().equals("number") ? (Object) 0.0 : (Object) 0);
            }
        }
        Memory found = struct(cells);
        Object[] arguments = new Object[(calculation.input() ? 1 : members.size()) + 1];
        if (calculation.input()) {
            // The struct begins with its size.
            members.add(0, 0L);
            Memory input = struct(members);
            members.set(0, input.size());
            if (Native.SIZE_T_SIZE == 8) {
                input.setLong(0, input.size());
            } else {
                input.setInt(0, (int) input.size());
            }
            arguments[0] = input;
        } else {
            for (int index = 0; index < members.size(); index++) {
                Object member = members.get(index);
                arguments[index] = member instanceof Long ? Library.size((Long) member) : member;
            }
        }
        arguments[arguments.length - 1] = found;
        try {
            Library.checked("pour_" + name, arguments);
        } finally {
            // A struct has addresses of memory that only the members keep.
            Reference.reachabilityFence(this);
        }
        return made(calculation, found);
    }

    /** Parameters that there are not. */
    private void unknown(Table.Calculation calculation, Map<String, ?> given) {
        List<String> known = calculation.parameters().stream().map(Table.Field::name).toList();
        for (String name : new TreeSet<>(given.keySet())) {
            if (!known.contains(name)) {
                refuse("unknown-field", "/" + name, "There is no parameter \"" + name + "\".", "Known: " + String.join(", ", known) + ".");
            }
        }
    }

    private void refuse(String code, String path, String message, String help) {
        faults.add(new Fault(code, path, message, help));
    }

    private void wrongType(String path, String wanted, Object value) {
        String found = value.getClass().getSimpleName();
        refuse("wrong-type", path, path.substring(1) + " must be " + wanted + ", not " + found + ".", "Pass " + wanted + ".");
    }

    private void read(Table.Field field, Object value) {
        String path = "/" + field.name();
        switch (field.kind()) {
            case "number" -> members.add(value == null ? OMITTED : number(path, value));
            case "count" -> members.add((int) (value == null ? OMITTED_COUNT : count(path, value)));
            case "word" -> members.add(value == null ? 0 : word(path, value, field.words()));
            case "text" -> members.add(value == null ? Pointer.NULL : text(path, value));
            case "list" -> rows(path, value, 1);
            default -> rows(path, value, field.columns());
        }
    }

    private double number(String path, Object value) {
        if (!(value instanceof Number)) {
            wrongType(path, "a number", value);
            return 0;
        }
        double number = ((Number) value).doubleValue();
        if (number == OMITTED) {
            refuse("out-of-range", path, path.substring(1) + " is " + number + ", which is out of range.", "Check the number.");
        }
        return number;
    }

    private long count(String path, Object value) {
        if (!(value instanceof Integer || value instanceof Long || value instanceof Short || value instanceof Byte)) {
            wrongType(path, "a whole number", value);
            return 0;
        }
        long count = ((Number) value).longValue();
        if (count < 0 || count >= OMITTED_COUNT) {
            String help = "Give a whole number from 0 to " + (OMITTED_COUNT - 1) + ".";
            refuse("out-of-range", path, path.substring(1) + " is " + count + ", which is out of range.", help);
        }
        return count;
    }

    private int word(String path, Object value, List<String> words) {
        if (!(value instanceof String)) {
            wrongType(path, "a word", value);
            return 0;
        }
        int place = words.indexOf(value);
        if (place < 0) {
            String message = "\"" + value + "\" is not a word for " + path.substring(1) + ".";
            refuse("unknown-word", path, message, "Known: " + String.join(", ", words) + ".");
        }
        return place + 1;
    }

    private Pointer text(String path, Object value) {
        if (!(value instanceof String text)) {
            wrongType(path, "a text", value);
            return Pointer.NULL;
        }
        if (text.indexOf('\0') >= 0) {
            refuse("wrong-type", path, path.substring(1) + " must not have a NUL character.", "Remove it.");
        }
        byte[] bytes = Library.utf8(text);
        Memory memory = new Memory(bytes.length);
        memory.write(0, bytes, 0, bytes.length);
        return memory;
    }

    /** A list of numbers, or of rows of several: its memory and its length. */
    private void rows(String path, Object value, int columns) {
        Object list = value instanceof double[] ? boxed((double[]) value) : value;
        if (list != null && !(list instanceof List)) {
            wrongType(path, columns > 1 ? "a list of rows of numbers" : "a list of numbers", value);
        }
        if (!(list instanceof List<?> rows)) {
            members.add(Pointer.NULL);
            members.add(0L);
            return;
        }
        // An empty list is not a null pointer, which omits it.
        Memory memory = new Memory(Math.max(1, rows.size()) * columns * (long) Double.BYTES);
        for (int index = 0; index < rows.size(); index++) {
            String place = path + "/" + index;
            Object row = rows.get(index);
            if (columns == 1) {
                memory.setDouble(index * (long) Double.BYTES, row == null ? 0 : number(place, row));
                continue;
            }
            List<?> items = row instanceof double[] ? boxed((double[]) row) : row instanceof List ? (List<?>) row : List.of();
            if (items.size() != columns) {
                refuse("wrong-type", place, place.substring(1) + " must be " + columns + " numbers.", "Pass " + columns + " numbers.");
                continue;
            }
            for (int column = 0; column < columns; column++) {
                double number = number(place + "/" + column, items.get(column));
                memory.setDouble((index * (long) columns + column) * Double.BYTES, number);
            }
        }
        members.add(memory);
        members.add((long) rows.size());
    }

    private static List<Double> boxed(double[] numbers) {
        List<Double> list = new ArrayList<>(numbers.length);
        for (double number : numbers) {
            list.add(number);
        }
        return list;
    }

    private static int sizeOf(Object cell) {
        return cell instanceof Double ? 8 : cell instanceof Integer ? 4 : cell instanceof Long ? Native.SIZE_T_SIZE : Native.POINTER_SIZE;
    }

    /** The cells one after the other as C lays them out. */
    private static Memory struct(List<Object> cells) {
        int end = 0, most = 1;
        int[] places = new int[cells.size()];
        for (int index = 0; index < places.length; index++) {
            int size = sizeOf(cells.get(index));
            places[index] = (end + size - 1) / size * size;
            end = places[index] + size;
            most = Math.max(most, size);
        }
        Memory memory = new Memory((end + most - 1) / most * most);
        memory.clear();
        for (int index = 0; index < places.length; index++) {
            Object cell = cells.get(index);
            if (cell instanceof Double) {
                memory.setDouble(places[index], (Double) cell);
            } else if (cell instanceof Integer) {
                memory.setInt(places[index], (Integer) cell);
            } else if (cell instanceof Long && Native.SIZE_T_SIZE == 8) {
                memory.setLong(places[index], (Long) cell);
            } else if (cell instanceof Long) {
                memory.setInt(places[index], ((Long) cell).intValue());
            } else {
                memory.setPointer(places[index], (Pointer) cell);
            }
        }
        return memory;
    }

    private static Map<String, Object> made(Table.Calculation calculation, Memory found) {
        Map<String, Object> results = new LinkedHashMap<>();
        int end = 0;
        for (Table.Field result : calculation.results()) {
            int size = result.kind().equals("number") ? 8 : 4;
            int place = (end + size - 1) / size * size;
            end = place + size;
            Object value;
            switch (result.kind()) {
                case "number" -> {
                    double number = found.getDouble(place);
                    value = Double.isNaN(number) ? null : (Object) number;
                }
                case "count" -> {
                    long count = Integer.toUnsignedLong(found.getInt(place));
                    value = count == OMITTED_COUNT ? null : (Object) count;
                }
                case "word" -> {
                    int word = found.getInt(place);
                    value = word == 0 ? null : result.words().get(word - 1);
                }
                default -> {
                    List<Long> counts = new ArrayList<>();
                    for (int index = 0; index < result.columns(); index++) {
                        counts.add(Integer.toUnsignedLong(found.getInt(place + 4L * index)));
                    }
                    value = counts;
                    end = place + 4 * result.columns();
                }
            }
            results.put(result.name(), value);
        }
        return results;
    }
}
