package org.vanewright.load;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CalibrationDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.ConditionsDocument;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.campaign.FlyingOrder;
import org.vanewright.campaign.InstrumentDocument;
import org.vanewright.campaign.InstrumentDocument.Quantity;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.PointSource;
import org.vanewright.campaign.RepeatsDocument;
import org.vanewright.campaign.RoleDocument;

/** Campaigns: the unmodified aircraft against up to three layouts in blocks; changes and scatter as clubs might find them. */
final class InventedFlights {
    private static final Instant FIRST_FLIGHT = Instant.parse("2015-05-02T08:00:00Z");
    private static final List<String> KEYS = List.of("A", "B", "C", "D");
    private static final int PER_SORTIE = 10;
    private static final double FT_PER_MIN = 550;

    private final CatalogueSize size;
    private final InventedAircraft aircraft;
    private final InventedLayouts layouts;

    InventedFlights(CatalogueSize size) {
        this.size = size;
        this.aircraft = new InventedAircraft(size.seed());
        this.layouts = new InventedLayouts(size);
    }

    CampaignDocument campaign(int number) {
        Chance chance = new Chance(size.seed(), "campaign", number);
        int airframe = number % size.airframes();
        AirframeDocument flown = aircraft.airframe(airframe);
        Measure measure = chance.percent(70) ? Measure.STALL_SPEED : chance.of(List.of(Measure.values()));
        int configurations = chance.percent(80) ? 2 : 4;
        PlanDocument plan = plan(number, airframe, flown, measure, configurations, chance);
        return new CampaignDocument(
                        Invention.name(
                                Invention.place(chance) + " " + measure.label().toLowerCase(Locale.ROOT), number),
                        "Invented flights from " + Invention.place(chance) + " in blocks over several days.",
                        plan,
                        true)
                .withPoints(points(number, flown, plan, chance));
    }

    private PlanDocument plan(
            int number, int airframe, AirframeDocument flown, Measure measure, int configurations, Chance chance) {
        List<ConfigurationDocument> compared = new ArrayList<>();
        compared.add(new ConfigurationDocument("A", "Unmodified", null));
        for (int i = 1; i < configurations; i++) {
            int layout = layouts.layoutOf(airframe, number / size.airframes() * 3 + i);
            var ref = Invention.ref(layouts.layout(layout).name());
            if (compared.stream().noneMatch(c -> ref.equals(c.layout()))) {
                compared.add(new ConfigurationDocument(KEYS.get(i), "Set " + i, ref));
            }
        }
        boolean stall = measure == Measure.STALL_SPEED;
        double mass =
                Math.rint(value(flown.masses() == null ? null : flown.masses().maximumKg()) * 0.93);
        return new PlanDocument(
                Invention.ref(flown.name()),
                measure,
                compared,
                new ConditionsDocument(
                        chance.of(List.of("up", "first notch")),
                        stall ? "idle" : "75 %",
                        "the same on every flight",
                        2500.0,
                        5500.0,
                        mass),
                List.of(
                        new InstrumentDocument("Airspeed indicator, dial", Quantity.AIRSPEED, 0.5, null),
                        new InstrumentDocument("Altimeter, dial", Quantity.ALTITUDE, 20.0, null)),
                List.of(new RoleDocument("Pilot", null)),
                new RepeatsDocument(
                        stall ? 0.8 : measure == Measure.CLIMB_RATE ? 40 : 1.2,
                        stall ? 1.0 : measure == Measure.CLIMB_RATE ? 40 : 1.5,
                        0.05,
                        0.8,
                        Math.min(200, Math.max(1, pointsOf(number) / configurations)),
                        PER_SORTIE,
                        FlyingOrder.RANDOMISED_BLOCKS,
                        number % 1000),
                new CalibrationDocument(null, 1));
    }

    /** Of all test points as even a part as whole numbers allow. */
    int pointsOf(int campaign) {
        long points = size.points();
        return (int) (points * (campaign + 1) / size.campaigns() - points * campaign / size.campaigns());
    }

    private List<PointDocument> points(int number, AirframeDocument flown, PlanDocument plan, Chance chance) {
        List<ConfigurationDocument> compared = plan.configurations();
        double[] change = new double[compared.size()];
        for (int i = 1; i < change.length; i++) {
            change[i] = chance.normal(-0.03, 0.02);
        }
        int count = pointsOf(number);
        Instant at = FIRST_FLIGHT.plus(Duration.ofHours(number));
        List<PointDocument> points = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            int configuration = i % compared.size();
            int sortie = 1 + i / PER_SORTIE;
            points.add(point(
                    i,
                    compared.get(configuration),
                    1 + change[configuration],
                    sortie,
                    1 + i / compared.size(),
                    at.plus(Duration.ofDays(sortie / 3)).plus(Duration.ofMinutes(6L * i)),
                    flown,
                    plan,
                    chance));
        }
        return points;
    }

    private static PointDocument point(
            int number,
            ConfigurationDocument configuration,
            double factor,
            int sortie,
            int block,
            Instant at,
            AirframeDocument flown,
            PlanDocument plan,
            Chance chance) {
        Measure measure = plan.measure() == null ? Measure.STALL_SPEED : plan.measure();
        double standard = value(plan.conditions().standardMassKg());
        double mass = Math.rint(standard * chance.normal(0.99, 0.012));
        double stall = value(flown.speeds() == null ? null : flown.speeds().vs1Kt());
        double speed = measure == Measure.STALL_SPEED
                ? stall * factor * Math.sqrt(mass / standard) + chance.normal(0, 0.7)
                : measure == Measure.CRUISE_SPEED
                        ? 2 * stall * (1 + (factor - 1) / 4) + chance.normal(0, 0.9)
                        : 1.4 * stall + chance.normal(0, 0.8);
        boolean stalled = measure == Measure.STALL_SPEED;
        return new PointDocument(
                "p-" + (number + 1),
                measure.kind(),
                configuration.key(),
                sortie,
                block,
                at.toString(),
                Chance.tenth(speed),
                chance.between(3000, 5000, 20),
                chance.between(2, 22, 0.5),
                mass,
                null,
                null,
                null,
                stalled ? Chance.tenth(Math.abs(chance.normal(0.9, 0.2))) : null,
                null,
                null,
                stalled ? null : 75.0,
                measure == Measure.CLIMB_RATE ? Math.rint(FT_PER_MIN * (2 - factor) + chance.normal(0, 35)) : null,
                List.of(),
                null,
                PointSource.TYPED);
    }

    private static double value(@Nullable Double figure) {
        return Objects.requireNonNull(figure);
    }
}
