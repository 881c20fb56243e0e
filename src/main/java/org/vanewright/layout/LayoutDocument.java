package org.vanewright.layout;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Lists;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordUse;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;

/**
 * A layout as it is recorded.
 *
 * @param name what people call it
 * @param description what it is for, in the contributor's words
 * @param airframe exact revision of the airframe
 * @param rows at least one
 * @param invented true for demonstration data
 * @param provenance where its figures come from
 * @param photographs of it
 */
public record LayoutDocument(
        String name,
        @Nullable String description,
        RevisionRef airframe,
        List<RowDocument> rows,
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public LayoutDocument {
        provenance = Lists.present(provenance);
        photographs = Lists.present(photographs);
    }

    /** One that says nothing of origins and has no photographs. */
    public LayoutDocument(
            String name, @Nullable String description, RevisionRef airframe, List<RowDocument> rows, boolean invented) {
        this(name, description, airframe, rows, invented, List.of(), List.of());
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    static LayoutDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("airframe") @Nullable RevisionRef airframe,
            @JsonProperty("rows") @Nullable List<@Nullable RowDocument> rows,
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new LayoutDocument(
                name, description, airframe, rows, Boolean.TRUE.equals(invented), provenance, photographs);
    }

    @Override
    public List<RecordUse> uses() {
        Stream<RecordUse> devices = rows.stream()
                .map(RowDocument::device)
                .flatMap(Stream::ofNullable)
                .distinct()
                .map(device -> new RecordUse("devices", device));
        return Stream.concat(Stream.of(new RecordUse("airframes", airframe)), devices)
                .toList();
    }

    @Override
    public LayoutDocument relocated(UnaryOperator<RecordUse> to) {
        List<RowDocument> moved = rows.stream().map(row -> row.relocated(to)).toList();
        RevisionRef there = to.apply(new RecordUse("airframes", airframe)).ref();
        return new LayoutDocument(name, description, there, moved, invented, provenance, photographs);
    }

    @Override
    public List<FigureGroup> figureGroups() {
        return IntStream.range(0, rows == null ? 0 : rows.size())
                .filter(i -> rows.get(i) != null)
                .mapToObj(i -> {
                    String rowName = rows.get(i).name();
                    return new FigureGroup(
                            "rows[" + i + "]", "Row " + (i + 1) + (rowName == null ? "" : ": " + rowName));
                })
                .toList();
    }
}
