package org.vanewright.layout;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.template.Register;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** Layouts under the contract of every repository of revisions. */
abstract class LayoutRepositoryContract extends RepositoryContract<LayoutDocument> {
    LayoutRepositoryContract(Databases.Engine engine) {
        super(engine, "layout_revision");
    }

    @Override
    protected final RevisionRepository<LayoutDocument> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        return new LayoutRepository(jdbc, json, clock);
    }

    @Override
    protected final LayoutDocument content(String name, int variant) {
        return new LayoutDocument(
                name,
                "Variant " + variant,
                new RevisionRef("river-trainer", 1),
                List.of(row(variant, 0.08, null), row(variant, null, 120.25)),
                variant % 2 == 0);
    }

    private static RowDocument row(int variant, @Nullable Double chordFraction, @Nullable Double arcDistanceMm) {
        return new RowDocument(
                "Row é \"" + variant + "\"",
                new RevisionRef("plain-vane", 2),
                "Wing",
                SurfaceSide.LOWER,
                1000.0,
                1000.0 + variant / 3.0,
                chordFraction,
                arcDistanceMm,
                Arrangement.COMMON_FLOW_UP,
                -12.5,
                60.0,
                null,
                WingChoice.BOTH_SAME_HAND,
                ConflictPolicy.LEAVE_OUT,
                Register.SPAR_LINE,
                0.35);
    }
}
