package org.vanewright.inspection;

import static org.vanewright.record.Lists.present;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordUse;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;

/**
 * What a revision of an inspection says. Every device of the installation was looked at; those not named were in place and
 * tight. Parts may be absent until {@link InspectionRules} has passed it.
 *
 * @param name what people call it
 * @param description notes
 * @param installation exact revision that was looked at
 * @param inspectedOn the day, as in ISO 8601
 * @param hoursFlown since the installation
 * @param losses devices that were missing or loose
 * @param invented true for demonstration data
 * @param provenance where its figures come from
 * @param photographs of it
 */
public record InspectionDocument(
        String name,
        @Nullable String description,
        @Nullable RevisionRef installation,
        @Nullable String inspectedOn,
        @Nullable Double hoursFlown,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<LossDocument> losses,
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public InspectionDocument {
        name = name == null ? "" : name;
        losses = present(losses);
        provenance = present(provenance);
        photographs = present(photographs);
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static InspectionDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("installation") @Nullable RevisionRef installation,
            @JsonProperty("inspectedOn") @Nullable String inspectedOn,
            @JsonProperty("hoursFlown") @Nullable Double hoursFlown,
            @JsonProperty("losses") @Nullable List<LossDocument> losses,
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new InspectionDocument(
                name,
                description,
                installation,
                inspectedOn,
                hoursFlown,
                losses,
                Boolean.TRUE.equals(invented),
                provenance,
                photographs);
    }

    /** How many were found so. */
    public int count(LossState state) {
        return (int) losses.stream().filter(l -> l.state() == state).count();
    }

    @Override
    public List<RecordUse> uses() {
        return Stream.ofNullable(installation)
                .map(i -> new RecordUse("installations", i))
                .toList();
    }

    @Override
    public List<FigureGroup> figureGroups() {
        return hoursFlown == null ? List.of() : List.of(new FigureGroup("hoursFlown", "Hours flown"));
    }
}
