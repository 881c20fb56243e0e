package org.vanewright.adhesive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.provenance.FigureOrigin;

/** Adhesives for tests. */
public final class Adhesives {
    private Adhesives() {}

    /** One with every figure. */
    public static AdhesiveDocument full(String name) {
        return of(name, Carrier.FOAM, 1.0, 15.0);
    }

    static AdhesiveDocument of(
            String name, @Nullable Carrier carrier, @Nullable Double thicknessMm, @Nullable Double peelNPerCm) {
        return new AdhesiveDocument(
                name,
                "“quoted” — ünïcode",
                carrier,
                thicknessMm,
                new LineStrength(peelNPerCm, TestMethod.ASTM_D3330),
                new LineStrength(25.0, TestMethod.ASTM_D1062),
                new AreaStrength(400.0, TestMethod.ASTM_D1002),
                new AreaStrength(500.0, TestMethod.ASTM_D897),
                new Holding(48.0, 1000.0, 645.0, TestMethod.ASTM_D3654),
                600.0,
                new Temperatures(-20.0, 70.0),
                new Temperatures(10.0, null),
                72.0,
                new PackRating(15.0, "holds 15 pounds"),
                "Held on a slow aircraft.",
                true,
                List.<FigureOrigin>of(),
                List.of());
    }
}
