package org.vanewright.platform.form;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Entries of lists within flat field paths. */
final class FieldLists {
    private static final Pattern INDEX = Pattern.compile("\\[(\\d{1,2})](.*)");
    private static final Pattern ENTRY = Pattern.compile("(.*?)s?\\[(\\d+)]");
    private static final Pattern UNIT = Pattern.compile("(Mm|M2|Kg|Kt|Deg)$");

    private FieldLists() {}

    static int size(Map<String, String> values, String listPath) {
        return values.keySet().stream()
                .mapToInt(path -> index(path, listPath) + 1)
                .max()
                .orElse(0);
    }

    static void remove(Map<String, String> values, String listPath, int index) {
        Map<String, String> kept = new LinkedHashMap<>();
        values.forEach((path, value) -> {
            int at = index(path, listPath);
            if (at > index) {
                String rest = path.substring((listPath + "[" + at + "]").length());
                kept.put(listPath + "[" + (at - 1) + "]" + rest, value);
            } else if (at != index) {
                kept.put(path, value);
            }
        });
        values.clear();
        values.putAll(kept);
        follow(values, listPath, index);
    }

    /** Fields called {@code figures} hold the path of another field: it must go on naming the same one, or none. */
    private static void follow(Map<String, String> values, String listPath, int removed) {
        values.replaceAll((path, value) -> {
            int at = path.endsWith(".figures") ? index(value, listPath) : -1;
            if (at < removed) {
                return value;
            }
            String rest = value.substring((listPath + "[" + at + "]").length());
            return at == removed ? "" : listPath + "[" + (at - 1) + "]" + rest;
        });
    }

    static void copy(Map<String, String> values, String fromPath, String toPath) {
        values.keySet().removeIf(path -> path.startsWith(toPath + "."));
        Map<String, String> copies = new LinkedHashMap<>();
        values.forEach((path, value) -> {
            if (path.startsWith(fromPath + ".")) {
                copies.put(toPath + path.substring(fromPath.length()), value);
            }
        });
        values.putAll(copies);
    }

    /** Index of the entry a path belongs to; −1 outside the list. */
    static int index(String path, String listPath) {
        if (!path.startsWith(listPath + "[")) {
            return -1;
        }
        Matcher m = INDEX.matcher(path.substring(listPath.length()));
        return m.matches() ? Integer.parseInt(m.group(1)) : -1;
    }

    static String words(String path) {
        String words = Stream.of(path.split("\\.", -1)).map(FieldLists::word).collect(Collectors.joining(", "));
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String word(String part) {
        Matcher entry = ENTRY.matcher(part);
        String name = entry.matches() ? entry.group(1) + " " + (Integer.parseInt(entry.group(2)) + 1) : part;
        return UNIT.matcher(name)
                .replaceFirst("")
                .replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT);
    }
}
