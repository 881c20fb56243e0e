package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.ConditionsDocument;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.campaign.InstrumentDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.campaign.Schedule;
import org.vanewright.platform.page.Numbers;
import org.vanewright.record.RevisionRef;

/**
 * The words of a test card. Its limits are the aircraft's own as recorded; none is invented. Method: FAA AC 90-89B, Amateur-
 * Built Aircraft and Ultralight Flight Testing Handbook, 2015; FAA AC 23-8C, 2011.
 */
final class TestCards {
    static final String SOURCES =
            "Method after FAA AC 90-89B, Amateur-Built Aircraft and Ultralight Flight Testing Handbook"
                    + " (2015), FAA AC 23-8C, Flight Test Guide (2011), and 14 CFR 23.201(b) as of 1996 (61 FR 5191).";

    static final List<String> STOP = List.of(
            "Anything on the aircraft is not as it should be: a device loose or gone, a new vibration, a control that feels"
                    + " different.",
            "A wing drops or the nose slices by more than the crew agreed on before the flight.",
            "The stall comes without warning where there was one before, or the warning sounds at another speed.",
            "Height, fuel, weather, traffic or the crew fall below what was agreed on before the flight.",
            "Recovery takes more height or another use of the controls than before.");

    static final List<String> CAUTIONS = List.of(
            "Height: begin where the stall, a spin and the recovery from both end well above the height agreed on for leaving"
                    + " or for the parachute.",
            "Slow down by no more than 1 kt in a second. Ball in the middle. Recover at the first break.",
            "Crew: nobody aboard who is not needed. Parachute or recovery system armed where there is one.",
            "One device lost on one side can drop that wing. Count the devices on both wings before and after each flight.",
            "The stall warning was set for the wing without devices. It may sound too early, too late or not at all.",
            "Weight and balance inside the aircraft's limits, worked out for this flight. Loose things stowed.");

    private TestCards() {}

    /** Flights of the plan in the order of flying; empty while it cannot be drawn. */
    static List<Schedule.Sortie> sorties(PlanDocument plan) {
        return Schedule.of(plan).map(Schedule::sorties).orElse(List.of());
    }

    static List<String> setUp(CampaignDocument campaign, Schedule.Sortie sortie) {
        PlanDocument plan = campaign.plan();
        ConditionsDocument conditions = plan.conditions();
        List<String> lines = new ArrayList<>();
        ConfigurationDocument configuration = plan.configuration(sortie.key()).orElseThrow();
        RevisionRef layout = configuration.layout();
        lines.add("Configuration " + configuration.key() + ", " + configuration.name() + ": "
                + (layout == null
                        ? "no devices fitted, skin clean."
                        : "layout " + layout.slug() + ", revision " + layout.revision()
                                + ". Both wings alike, every device there and firm."));
        lines.add("Flaps " + conditions.flaps() + ". Power " + conditions.power() + ". Centre of gravity: "
                + conditions.centreOfGravity() + ".");
        lines.add(String.format(
                Locale.ROOT,
                "Between %s and %s ft pressure altitude, altimeter at 1013.25 hPa. Results are brought to %s kg.",
                number(conditions.lowestFt()),
                number(conditions.highestFt()),
                number(conditions.standardMassKg())));
        if (!plan.instruments().isEmpty()) {
            lines.add("Read from: " + instruments(plan) + ".");
        }
        return lines;
    }

    private static String instruments(PlanDocument plan) {
        List<String> names = new ArrayList<>();
        for (InstrumentDocument each : plan.instruments()) {
            String unit = each.quantity() == null ? "" : each.quantity().unit();
            names.add(each.name()
                    + (each.resolution() == null
                            ? ""
                            : " (to " + number(each.resolution()) + (unit.isEmpty() ? "" : " " + unit) + ")"));
        }
        return String.join(", ", names);
    }

    /** The aircraft's own limits as its record states them. */
    static List<String> limits(@Nullable AirframeDocument airframe) {
        List<String> lines = new ArrayList<>();
        lines.add("The aircraft's own operating limitations hold, whatever stands here. Copied from its record:");
        List<String> figures = new ArrayList<>();
        if (airframe != null && airframe.speeds() != null) {
            add(figures, "Vne", airframe.speeds().vneKt(), "kt");
            add(figures, "Va", airframe.speeds().vaKt(), "kt");
            add(figures, "Vs1", airframe.speeds().vs1Kt(), "kt");
            add(figures, "Vs0", airframe.speeds().vs0Kt(), "kt");
        }
        if (airframe != null && airframe.masses() != null) {
            add(figures, "maximum mass", airframe.masses().maximumKg(), "kg");
        }
        lines.add(figures.isEmpty() ? "none recorded" : String.join(" · ", figures) + " (speeds calibrated).");
        return lines;
    }

    private static void add(List<String> figures, String name, @Nullable Double figure, String unit) {
        if (figure != null) {
            figures.add(name + " " + number(figure) + " " + unit);
        }
    }

    static List<String> steps(Measure measure, int points) {
        String repeat = points == 1 ? "Once." : points + " times, from level flight each time.";
        return switch (measure) {
            case STALL_SPEED ->
                List.of(
                        "Climb to the upper part of the altitudes. Clearing turns. Loose things stowed, straps tight.",
                        "Trim for steady flight at about 1.5 times the stall speed, in this configuration.",
                        "Set the power. Hold height, slow down by no more than 1 kt in a second, ball in the middle.",
                        "Read out the speed at the first warning, then the lowest speed at the break. Recover at once.",
                        "Write down all of the row. " + repeat);
            case CRUISE_SPEED ->
                List.of(
                        "Fly level in smooth air at the power of the row until speed and height stand for two minutes.",
                        "Read speed, height, temperature and power together; write them down.",
                        repeat);
            case CLIMB_RATE ->
                List.of(
                        "Climb at the speed of the row, across the wind, on reciprocal headings through the same altitudes.",
                        "Time the altimeter through the band; keep speed within 1 kt.",
                        "Write down the mean rate of both headings. " + repeat);
        };
    }

    /** Heads of the columns to fill in. */
    static List<String> blanks(Measure measure) {
        return switch (measure) {
            case STALL_SPEED ->
                List.of(
                        "No.",
                        "Time",
                        "IAS kt",
                        "Alt ft",
                        "OAT °C",
                        "Fuel kg",
                        "Entry kt/s",
                        "n",
                        "Warning kt",
                        "Drop °");
            case CRUISE_SPEED -> List.of("No.", "Time", "IAS kt", "Alt ft", "OAT °C", "Fuel kg", "Power %", "Remark");
            case CLIMB_RATE ->
                List.of("No.", "Time", "IAS kt", "Alt ft", "OAT °C", "Fuel kg", "Power %", "ft/min", "Remark");
        };
    }

    static Measure measure(CampaignDocument campaign) {
        return Objects.requireNonNull(campaign.plan().measure());
    }

    private static String number(@Nullable Double figure) {
        return figure == null ? "–" : Numbers.trimmed(figure, 2);
    }
}
