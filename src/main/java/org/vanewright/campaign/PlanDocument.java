package org.vanewright.campaign;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Lists;
import org.vanewright.record.RecordUse;
import org.vanewright.record.RevisionRef;

/**
 * What is to be found out and how.
 *
 * @param airframe exact revision of the aircraft
 * @param measure what is compared
 * @param configurations at least the unmodified aircraft, which comes first
 * @param conditions under which test points count
 * @param instruments what was read
 * @param roles who takes part
 * @param repeats how much is flown, in which order
 * @param calibration of the airspeeds
 */
public record PlanDocument(
        @Nullable RevisionRef airframe,
        @Nullable Measure measure,
        List<ConfigurationDocument> configurations,
        ConditionsDocument conditions,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<InstrumentDocument> instruments,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<RoleDocument> roles,
        RepeatsDocument repeats,
        CalibrationDocument calibration) {
    static final PlanDocument NONE = new PlanDocument(
            null,
            null,
            List.of(),
            ConditionsDocument.NONE,
            List.of(),
            List.of(),
            RepeatsDocument.NONE,
            CalibrationDocument.NONE);

    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public PlanDocument {
        configurations = Lists.present(configurations);
        conditions = conditions == null ? ConditionsDocument.NONE : conditions;
        instruments = Lists.present(instruments);
        roles = Lists.present(roles);
        repeats = repeats == null ? RepeatsDocument.NONE : repeats;
        calibration = calibration == null ? CalibrationDocument.NONE : calibration;
    }

    PlanDocument relocated(UnaryOperator<RecordUse> to) {
        return new PlanDocument(
                moved("airframes", airframe, to),
                measure,
                configurations.stream()
                        .map(c -> new ConfigurationDocument(c.key(), c.name(), moved("layouts", c.layout(), to)))
                        .toList(),
                conditions,
                instruments,
                roles,
                repeats,
                new CalibrationDocument(moved("campaigns", calibration.campaign(), to), calibration.degree()));
    }

    private static @Nullable RevisionRef moved(String plural, @Nullable RevisionRef ref, UnaryOperator<RecordUse> to) {
        return ref == null ? null : to.apply(new RecordUse(plural, ref)).ref();
    }

    /** The configuration with that key. */
    public Optional<ConfigurationDocument> configuration(@Nullable String key) {
        return configurations.stream()
                .filter(c -> key != null && key.equals(c.key()))
                .findFirst();
    }

    /** Keys of the configurations, the unmodified aircraft's first. */
    public List<String> keys() {
        return configurations.stream().map(c -> c.key() == null ? "" : c.key()).toList();
    }

    /** The finest step of an instrument for that quantity, if one is named. */
    public Optional<Double> resolution(InstrumentDocument.Quantity quantity) {
        return instruments.stream()
                .filter(i -> i.quantity() == quantity && i.resolution() != null)
                .map(InstrumentDocument::resolution)
                .findFirst();
    }
}
