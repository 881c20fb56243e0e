package org.vanewright.installation;

import static org.vanewright.record.Lists.present;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.PrintMaterial;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordUse;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;

/**
 * What a revision of an installation says. The aircraft is known by its layout only. Parts may be absent until
 * {@link InstallationRules} has passed it.
 *
 * @param name what people call it
 * @param description whatever helps to understand it later
 * @param layout exact revision that was put on
 * @param adhesive exact revision of its record; absent where the club has none
 * @param adhesiveClass in words, where there is no record, such as "foam tape, 1.1 mm"; no brand
 * @param printRun exact revision of the run the pieces came from; absent where the club has none
 * @param material of the pieces, where there is no run
 * @param installedOn the day, as in ISO 8601
 * @param conditions of the day and the skin
 * @param doneBy role of who did it, never a name
 * @param leftOff devices of the layout that were not put on
 * @param tolerances beyond which a sample is pointed out
 * @param samples devices that were measured
 * @param invented true for demonstration data
 * @param provenance where its figures come from
 * @param photographs of it
 */
public record InstallationDocument(
        String name,
        @Nullable String description,
        @Nullable RevisionRef layout,
        @Nullable RevisionRef adhesive,
        @Nullable String adhesiveClass,
        @Nullable RevisionRef printRun,
        @Nullable PrintMaterial material,
        @Nullable String installedOn,
        ConditionsDocument conditions,
        @Nullable String doneBy,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<DeviceAt> leftOff,
        TolerancesDocument tolerances,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<SampleDocument> samples,
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public InstallationDocument {
        name = name == null ? "" : name;
        conditions = conditions == null ? ConditionsDocument.NONE : conditions;
        leftOff = present(leftOff);
        tolerances = tolerances == null ? TolerancesDocument.NONE : tolerances;
        samples = present(samples);
        provenance = present(provenance);
        photographs = present(photographs);
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static InstallationDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("layout") @Nullable RevisionRef layout,
            @JsonProperty("adhesive") @Nullable RevisionRef adhesive,
            @JsonProperty("adhesiveClass") @Nullable String adhesiveClass,
            @JsonProperty("printRun") @Nullable RevisionRef printRun,
            @JsonProperty("material") @Nullable PrintMaterial material,
            @JsonProperty("installedOn") @Nullable String installedOn,
            @JsonProperty("conditions") @Nullable ConditionsDocument conditions,
            @JsonProperty("doneBy") @Nullable String doneBy,
            @JsonProperty("leftOff") @Nullable List<DeviceAt> leftOff,
            @JsonProperty("tolerances") @Nullable TolerancesDocument tolerances,
            @JsonProperty("samples") @Nullable List<SampleDocument> samples,
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new InstallationDocument(
                name,
                description,
                layout,
                adhesive,
                adhesiveClass,
                printRun,
                material,
                installedOn,
                conditions,
                doneBy,
                leftOff,
                tolerances,
                samples,
                Boolean.TRUE.equals(invented),
                provenance,
                photographs);
    }

    @Override
    public List<RecordUse> uses() {
        List<RecordUse> uses = new ArrayList<>();
        add(uses, "layouts", layout);
        add(uses, "adhesives", adhesive);
        add(uses, "print-runs", printRun);
        return List.copyOf(uses);
    }

    private static void add(List<RecordUse> uses, String plural, @Nullable RevisionRef ref) {
        if (ref != null) {
            uses.add(new RecordUse(plural, ref));
        }
    }

    @Override
    public List<FigureGroup> figureGroups() {
        List<FigureGroup> groups = new ArrayList<>();
        groups.add(new FigureGroup("conditions", "Conditions of the day"));
        if (!samples.isEmpty()) {
            groups.add(new FigureGroup("samples", "Measured devices"));
        }
        return List.copyOf(groups);
    }
}
