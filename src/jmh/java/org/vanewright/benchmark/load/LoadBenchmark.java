package org.vanewright.benchmark.load;

import java.nio.file.Path;
import org.vanewright.load.CatalogueSize;

public final class LoadBenchmark {
    private LoadBenchmark() {}

    public static void main(String[] arguments) {
        CatalogueSize size = CatalogueSize.ofLayouts(Integer.parseInt(arguments[1]), 7);
        try (LoadDatabase database = LoadDatabase.open(arguments[0], Path.of(arguments[2]))) {
            LoadCatalogue.ensure(database, size);
            System.out.println(database.version());
        }
    }
}
