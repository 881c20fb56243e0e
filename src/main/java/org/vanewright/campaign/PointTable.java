package org.vanewright.campaign;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Test points as comma-separated values (RFC 4180), a header first. Legs of an airspeed calibration stand on rows of their
 * own: rows with the same {@code run} make one test point.
 *
 * @param points what can be read, in the order of the file
 * @param rows how many rows there are below the header
 * @param refused rows that cannot be read, each with its reason
 */
public record PointTable(List<PointDocument> points, int rows, List<Refused> refused) {
    /** More than this is no table of test points. */
    public static final int MAX_ROWS = 5000;

    public static final int MAX_BYTES = 1_000_000;

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .setIgnoreEmptyLines(true)
            .get();

    /** A column with what it holds. */
    public record Column(String name, String meaning) {}

    /** Every column; those that are needed come first. */
    public static final List<Column> COLUMNS = List.of(
            new Column("kind", "STALL, CRUISE, CLIMB or AIRSPEED"),
            new Column("configuration", "key of a configuration of the plan, such as A"),
            new Column("sortie", "number of the flight, a whole number"),
            new Column("indicated_airspeed_kt", "as read; of a stall its lowest"),
            new Column("pressure_altitude_ft", "altimeter set to 1013.25 hPa"),
            new Column("outside_air_temperature_c", "as read"),
            new Column("block", "number of the block of the order of flying"),
            new Column("at", "when, as 2026-05-02T09:14:00Z"),
            new Column("mass_kg", "of the aircraft then; or give the next two"),
            new Column("start_mass_kg", "at the start of the flight"),
            new Column("fuel_used_kg", "since then"),
            new Column("load_factor", "at the break of a stall; empty counts as 1"),
            new Column("entry_rate_kt_per_s", "slowing down into the stall, positive"),
            new Column("warning_airspeed_kt", "indicated, at the first warning"),
            new Column("wing_drop_deg", "largest bank in the stall"),
            new Column("power_percent", "of rated power, in cruise and climb"),
            new Column("climb_rate_ft_per_min", "of pressure altitude"),
            new Column("run", "a name that the legs of one airspeed calibration share"),
            new Column("ground_speed_kt", "of a leg, by satellite"),
            new Column("track_deg", "true track of a leg"),
            new Column("heading_deg", "true heading of a leg, instead of its track"),
            new Column("remark", "anything else"),
            new Column("id", "one of your own, so that a row imported twice counts once"));

    private static final int NEEDED = 6;

    /**
     * A row that is left out.
     *
     * @param row its number, the first below the header being 1
     * @param reason what is wrong with it
     */
    public record Refused(int row, String reason) {}

    /**
     * Reads a table.
     *
     * @throws InvalidInputException field {@code file}: no table at all, or one without the columns that are needed
     */
    public static PointTable read(String text, PlanDocument plan) {
        if (text.length() > MAX_BYTES) {
            throw refusedFile(text.length() + " characters", "at most " + MAX_BYTES + " characters");
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        try (CSVParser parser = CSVParser.parse(new StringReader(plain), FORMAT)) {
            requireColumns(parser.getHeaderNames());
            return new Reader(plan).read(parser);
        } catch (CSVException | IllegalArgumentException | UncheckedIOException e) {
            throw refusedFile("no table", "comma-separated values with a header (" + e.getMessage() + ")");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void requireColumns(List<String> header) {
        Set<String> given = new TreeSet<>(header);
        for (Column column : COLUMNS.subList(0, NEEDED)) {
            if (!given.contains(column.name())) {
                throw refusedFile(
                        header.isEmpty() ? "nothing" : String.join(", ", header),
                        "a header with the column " + column.name());
            }
        }
        List<String> known = COLUMNS.stream().map(Column::name).toList();
        given.removeAll(known);
        if (!given.isEmpty()) {
            throw refusedFile(String.join(", ", given), "only known columns: " + String.join(", ", known));
        }
    }

    private static InvalidInputException refusedFile(String value, String allowed) {
        String shown = value.length() > 80 ? value.substring(0, 77) + "…" : value;
        return new InvalidInputException(new FieldProblem("file", shown, allowed));
    }

    /** Reads rows one after the other. */
    private static final class Reader {
        private final PlanDocument plan;
        private final List<PointDocument> points = new ArrayList<>();
        private final List<Refused> refused = new ArrayList<>();
        private final Map<String, Run> runs = new LinkedHashMap<>();

        Reader(PlanDocument plan) {
            this.plan = plan;
        }

        /** The rows of one airspeed calibration. */
        private record Run(int row, CsvRow first, List<LegDocument> legs) {}

        PointTable read(CSVParser parser) {
            int row = 0;
            for (CSVRecord line : parser) {
                row++;
                if (row > MAX_ROWS) {
                    throw refusedFile("more than " + MAX_ROWS + " rows", "at most " + MAX_ROWS + " rows");
                }
                take(row, line);
            }
            runs.forEach((name, run) -> point(run.row(), run.first(), run.legs()));
            return new PointTable(List.copyOf(points), row, List.copyOf(refused));
        }

        private void take(int row, CSVRecord line) {
            if (!line.isConsistent()) {
                refused.add(new Refused(row, "has " + line.size() + " cells, the header has another number of them"));
                return;
            }
            CsvRow cells = new CsvRow(line);
            String run = cells.text("run");
            if (run == null) {
                point(row, cells, List.of());
                return;
            }
            LegDocument leg = new LegDocument(
                    cells.number("ground_speed_kt"), cells.number("track_deg"), cells.number("heading_deg"));
            if (cells.isUnreadable()) {
                refused.add(new Refused(row, cells.reason()));
                return;
            }
            runs.computeIfAbsent(run, name -> new Run(row, cells, new ArrayList<>()))
                    .legs()
                    .add(leg);
        }

        private void point(int row, CsvRow cells, List<LegDocument> legs) {
            PointDocument point = cells.point(legs);
            if (cells.isUnreadable()) {
                refused.add(new Refused(row, cells.reason()));
                return;
            }
            List<FieldProblem> problems = PointRules.check(point, plan);
            if (problems.isEmpty()) {
                points.add(point);
            } else {
                FieldProblem first = problems.get(0);
                refused.add(new Refused(
                        row,
                        column(first.field()) + " is " + first.value() + "; allowed is " + first.allowed()
                                + (problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more)")));
            }
        }

        /** {@code indicatedAirspeedKt} is the column {@code indicated_airspeed_kt}. */
        private static String column(String field) {
            return field.replaceAll("([a-z])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
        }
    }

    /** An id that the same row always gets, so that importing a file twice adds nothing. */
    static String idOf(String row) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(row.getBytes(StandardCharsets.UTF_8));
            return "row-" + HexFormat.of().formatHex(hash, 0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    static @Nullable String blankToNull(String cell) {
        return cell.isBlank() ? null : cell.strip();
    }
}
