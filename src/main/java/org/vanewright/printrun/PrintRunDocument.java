package org.vanewright.printrun;

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
 * A print run as it is recorded. Parts may be absent until {@link PrintRunRules} has passed it.
 *
 * @param name what people call it
 * @param description whatever helps to repeat it
 * @param device exact revision that was printed
 * @param layout exact revision it was printed for; absent where it was for none
 * @param printing what it was printed with
 * @param settings of the machine, as the person calls them
 * @param outcome how many, how long, how good
 * @param sample pieces that were measured
 * @param invented true for demonstration data
 * @param provenance where its figures come from
 * @param photographs of it
 */
public record PrintRunDocument(
        String name,
        @Nullable String description,
        @Nullable RevisionRef device,
        @Nullable RevisionRef layout,
        PrintingDocument printing,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<SettingDocument> settings,
        OutcomeDocument outcome,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<SampleDocument> sample,
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public PrintRunDocument {
        name = name == null ? "" : name;
        printing = printing == null ? PrintingDocument.NONE : printing;
        outcome = outcome == null ? OutcomeDocument.NONE : outcome;
        settings = present(settings);
        sample = present(sample);
        provenance = present(provenance);
        photographs = present(photographs);
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static PrintRunDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("device") @Nullable RevisionRef device,
            @JsonProperty("layout") @Nullable RevisionRef layout,
            @JsonProperty("printing") @Nullable PrintingDocument printing,
            @JsonProperty("settings") @Nullable List<SettingDocument> settings,
            @JsonProperty("outcome") @Nullable OutcomeDocument outcome,
            @JsonProperty("sample") @Nullable List<SampleDocument> sample,
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new PrintRunDocument(
                name,
                description,
                device,
                layout,
                printing,
                settings,
                outcome,
                sample,
                Boolean.TRUE.equals(invented),
                provenance,
                photographs);
    }

    @Override
    public List<RecordUse> uses() {
        return Stream.concat(
                        Stream.ofNullable(device).map(ref -> new RecordUse("devices", ref)),
                        Stream.ofNullable(layout).map(ref -> new RecordUse("layouts", ref)))
                .toList();
    }

    @Override
    public List<FigureGroup> figureGroups() {
        return List.of(
                new FigureGroup("outcome", "Count, time and material"),
                new FigureGroup("outcome.minutes", "Time"),
                new FigureGroup("outcome.materialG", "Material used"),
                new FigureGroup("sample", "Pieces measured"));
    }
}
