package org.vanewright.benchmark.load;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;

/**
 * Makes the large catalogue where it is not there yet, starts the service on it and asks it for everything that people ask
 * for; see {@link Settings} for what may be chosen.
 */
public final class LoadBenchmark {
    private LoadBenchmark() {}

    public static void main(String[] arguments) {
        Settings settings = Settings.of(arguments);
        settings.engines().forEach(engine -> run(engine, settings));
    }

    private static void run(String engine, Settings settings) {
        try (LoadDatabase database = LoadDatabase.open(engine, settings.directory(engine))) {
            LoadCatalogue.ensure(database, settings.size());
            if (settings.rounds() == 0) {
                return;
            }
            String circumstances = LoadTable.circumstances(database, database.version(), settings);
            try (ServiceUnderLoad service = ServiceUnderLoad.start(database, settings.heapMb())) {
                System.out.println("\n## " + engine + "\n\n" + circumstances + "\n");
                Recorder recorder = new Recorder();
                Scenarios scenarios = new Scenarios(settings.size());
                Writers writers = new Writers(service.origin(), settings.size(), recorder);
                if (settings.soak().isZero()) {
                    System.out.println(
                            LoadTable.of(recorder, measured(service, scenarios, writers, settings, recorder)));
                } else {
                    Soak.run(service, scenarios, writers, settings, recorder);
                    System.out.println("\n" + LoadTable.of(recorder, Map.of()));
                }
                System.out.printf("resident after all: %d MB%n", service.residentKb() / 1024);
            }
        }
    }

    /** For how long a kind of request was measured, and the processor time of the service meanwhile. */
    record Spent(Duration time, long processorMillis) {
        Spent plus(Spent other) {
            return new Spent(time.plus(other.time), processorMillis + other.processorMillis);
        }
    }

    private static Map<String, Spent> measured(
            ServiceUnderLoad service, Scenarios scenarios, Writers writers, Settings settings, Recorder recorder) {
        Load load = new Load(service, settings.clients(), recorder);
        Map<String, Spent> measured = new HashMap<>();
        for (int round = 0; round < settings.rounds(); round++) {
            run(new Scenarios.Named(Scenarios.EMPTY, scenarios::empty), load, settings, measured);
            for (Scenarios.Named each : scenarios.all(writers)) {
                if (settings.only().matcher(each.name()).find()) {
                    run(each, load, settings, measured);
                }
            }
        }
        return measured;
    }

    private static void run(Scenarios.Named each, Load load, Settings settings, Map<String, Spent> measured) {
        long processor = load.run(each.scenario(), settings.warmUp(), settings.measured());
        String group = each.name().replaceFirst("^(template|drawing) ", "$1, ").replace("others", "other");
        measured.merge(group, new Spent(settings.measured(), processor), Spent::plus);
    }
}
