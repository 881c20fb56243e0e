package org.vanewright.campaign;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** One row of a table of test points; keeps what it could not read. */
final class CsvRow {
    private final CSVRecord line;
    private @Nullable String problem;

    CsvRow(CSVRecord line) {
        this.line = line;
    }

    boolean isUnreadable() {
        return problem != null;
    }

    String reason() {
        return String.valueOf(problem);
    }

    @Nullable
    String text(String column) {
        return line.isMapped(column) ? PointTable.blankToNull(line.get(column)) : null;
    }

    @Nullable
    Double number(String column) {
        String typed = text(column);
        if (typed == null) {
            return null;
        }
        // Spreadsheets of half of Europe write a decimal comma; inside quotes it is no separator.
        String plain = typed.replace(',', '.');
        if (!plain.matches("[+-]?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})")) {
            note(column, typed, "a number such as 12.5");
            return null;
        }
        return Double.valueOf(plain);
    }

    private @Nullable Integer whole(String column) {
        Double number = number(column);
        if (number != null && (number != Math.rint(number) || Math.abs(number) > 1_000_000)) {
            note(column, text(column), "a whole number");
            return null;
        }
        return number == null ? null : (Integer) number.intValue();
    }

    private @Nullable PointKind kind() {
        String typed = text("kind");
        Optional<PointKind> found = Arrays.stream(PointKind.values())
                .filter(k -> k.name().equalsIgnoreCase(String.valueOf(typed)))
                .findFirst();
        if (found.isEmpty()) {
            note("kind", typed, "STALL, CRUISE, CLIMB or AIRSPEED");
        }
        return found.orElse(null);
    }

    private void note(String column, @Nullable String value, String allowed) {
        if (problem == null) {
            problem = column + " is " + (value == null ? "missing" : value) + "; allowed is " + allowed;
        }
    }

    PointDocument point(List<LegDocument> legs) {
        String given = text("id");
        return new PointDocument(
                given == null ? PointTable.idOf(String.join("\u001f", line.values())) : given,
                kind(),
                text("configuration"),
                whole("sortie"),
                whole("block"),
                text("at"),
                number("indicated_airspeed_kt"),
                number("pressure_altitude_ft"),
                number("outside_air_temperature_c"),
                number("mass_kg"),
                number("start_mass_kg"),
                number("fuel_used_kg"),
                number("load_factor"),
                number("entry_rate_kt_per_s"),
                number("warning_airspeed_kt"),
                number("wing_drop_deg"),
                number("power_percent"),
                number("climb_rate_ft_per_min"),
                legs,
                text("remark"),
                PointSource.IMPORTED);
    }
}
