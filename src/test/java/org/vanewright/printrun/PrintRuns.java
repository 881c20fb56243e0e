package org.vanewright.printrun;

import java.util.List;
import java.util.stream.DoubleStream;
import org.vanewright.device.PrintMaterial;
import org.vanewright.record.RevisionRef;

/** Print runs for tests. */
public final class PrintRuns {
    static final RevisionRef DEVICE = new RevisionRef("rectangular-vane-8-by-20", 1);

    private PrintRuns() {}

    static PrintRunDocument run(String name, OutcomeDocument outcome, List<SampleDocument> sample) {
        return new PrintRunDocument(
                name,
                "Notes “quoted” — ünïcode",
                DEVICE,
                null,
                new PrintingDocument("2026-04-11", PrintMaterial.ABS, "Filament printer, closed case"),
                List.of(new SettingDocument("Layer height", "0.2 mm")),
                outcome,
                sample,
                true,
                List.of(),
                List.of());
    }

    static OutcomeDocument outcome(int pieces, DefectDocument... defects) {
        return new OutcomeDocument(pieces, 240.0, 24.0, null, 0.3, List.of(defects));
    }

    static List<SampleDocument> heights(double... heightsMm) {
        return DoubleStream.of(heightsMm)
                .mapToObj(h -> new SampleDocument(h, null))
                .toList();
    }
}
