package org.vanewright.benchmark.load;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.vanewright.load.CatalogueSize;

/**
 * What to run, from words such as {@code layouts=100000}.
 *
 * @param engines databases, one after the other
 * @param size of the catalogue
 * @param at where their databases are kept; the engine's name follows
 * @param heapMb of the service
 * @param clients that ask at a time, each as soon as it has its answer
 * @param warmUp of each kind of request in each round
 * @param measured of each kind of request in each round
 * @param rounds over all kinds, so that what else the machine does meets all of them
 * @param only kinds whose names match
 * @param soak how long the mixture runs instead; zero for none
 */
record Settings(
        List<String> engines,
        CatalogueSize size,
        String at,
        int heapMb,
        int clients,
        Duration warmUp,
        Duration measured,
        int rounds,
        Pattern only,
        Duration soak) {
    private static final int SEED = 7;

    static Settings of(String[] arguments) {
        Map<String, String> given = new HashMap<>();
        Arrays.stream(String.join(" ", arguments).trim().split("\\s+"))
                .filter(word -> word.contains("="))
                .forEach(word -> given.put(word.replaceFirst("=.*", ""), word.replaceFirst("^[^=]*=", "")));
        Settings settings = new Settings(
                List.of(take(given, "engines", "postgresql,h2").split(",")),
                CatalogueSize.ofLayouts(number(given, "layouts", 100_000), SEED),
                take(given, "at", "/tmp/load-"),
                number(given, "heap", 256),
                number(given, "clients", 4),
                Duration.ofSeconds(number(given, "warmup", 3)),
                Duration.ofSeconds(number(given, "seconds", 6)),
                number(given, "rounds", 2),
                Pattern.compile(take(given, "only", ".*")),
                Duration.ofMinutes(number(given, "soak", 0)));
        if (!given.isEmpty()) {
            throw new IllegalArgumentException("no such settings: " + given.keySet());
        }
        return settings;
    }

    private static String take(Map<String, String> given, String name, String usual) {
        String found = given.remove(name);
        return found == null ? usual : found;
    }

    private static int number(Map<String, String> given, String name, int usual) {
        return Integer.parseInt(take(given, name, Integer.toString(usual)));
    }

    /** Where the database of an engine is kept: {@code /tmp/load-pg}, {@code /tmp/load-h2}. */
    Path directory(String engine) {
        return Path.of(at + (engine.equals("postgresql") ? "pg" : engine));
    }
}
