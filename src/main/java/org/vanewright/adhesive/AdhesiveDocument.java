package org.vanewright.adhesive;

import static org.vanewright.record.Lists.present;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.RecordContent;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;

/**
 * An adhesive as it is recorded: by class and property, without a brand.
 *
 * @param name a class, such as "Foam tape, 1 mm"
 * @param description how it was tried and on what, in the contributor's words
 * @param carrier what carries the adhesive
 * @param thicknessMm of the tape, or of the bond line of a glue
 * @param peel strength in peel
 * @param cleavage strength in cleavage
 * @param shear strength in shear
 * @param tensile strength in tension square to the skin
 * @param holding a time under a hung mass
 * @param modulusKPa tensile modulus through its thickness
 * @param service temperatures it is made for once bonded
 * @param application temperatures of skin and piece at which it may be applied
 * @param dwellHours until it has its strength, at room temperature
 * @param pack what its pack claims
 * @param practice what people say of it: common practice, no source
 * @param invented true for demonstration data
 * @param provenance where its figures come from
 * @param photographs of it
 */
public record AdhesiveDocument(
        String name,
        @Nullable String description,
        @Nullable Carrier carrier,
        @Nullable Double thicknessMm,
        @Nullable LineStrength peel,
        @Nullable LineStrength cleavage,
        @Nullable AreaStrength shear,
        @Nullable AreaStrength tensile,
        @Nullable Holding holding,
        @Nullable Double modulusKPa,
        @Nullable Temperatures service,
        @Nullable Temperatures application,
        @Nullable Double dwellHours,
        @Nullable PackRating pack,
        @Nullable String practice,
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public AdhesiveDocument {
        name = name == null ? "" : name;
        provenance = present(provenance);
        photographs = present(photographs);
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static AdhesiveDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("carrier") @Nullable Carrier carrier,
            @JsonProperty("thicknessMm") @Nullable Double thicknessMm,
            @JsonProperty("peel") @Nullable LineStrength peel,
            @JsonProperty("cleavage") @Nullable LineStrength cleavage,
            @JsonProperty("shear") @Nullable AreaStrength shear,
            @JsonProperty("tensile") @Nullable AreaStrength tensile,
            @JsonProperty("holding") @Nullable Holding holding,
            @JsonProperty("modulusKPa") @Nullable Double modulusKPa,
            @JsonProperty("service") @Nullable Temperatures service,
            @JsonProperty("application") @Nullable Temperatures application,
            @JsonProperty("dwellHours") @Nullable Double dwellHours,
            @JsonProperty("pack") @Nullable PackRating pack,
            @JsonProperty("practice") @Nullable String practice,
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new AdhesiveDocument(
                name,
                description,
                carrier,
                thicknessMm,
                peel,
                cleavage,
                shear,
                tensile,
                holding,
                modulusKPa,
                service,
                application,
                dwellHours,
                pack,
                practice,
                Boolean.TRUE.equals(invented),
                provenance,
                photographs);
    }

    @Override
    public List<FigureGroup> figureGroups() {
        List<FigureGroup> groups = new ArrayList<>();
        add(groups, thicknessMm, "thicknessMm", "Thickness");
        add(groups, peel, "peel", "Peel strength");
        add(groups, cleavage, "cleavage", "Cleavage strength");
        add(groups, shear, "shear", "Shear strength");
        add(groups, tensile, "tensile", "Tensile strength");
        add(groups, holding, "holding", "Time under a hung mass");
        add(groups, modulusKPa, "modulusKPa", "Modulus through the thickness");
        add(groups, service, "service", "Temperatures in service");
        add(groups, application, "application", "Temperatures at application");
        add(groups, dwellHours, "dwellHours", "Dwell");
        add(groups, pack, "pack", "Rating on the pack");
        return List.copyOf(groups);
    }

    private static void add(List<FigureGroup> groups, @Nullable Object figure, String path, String words) {
        if (figure != null) {
            groups.add(new FigureGroup(path, words));
        }
    }

    /** Peel strength in N/cm; null where it is not stated. */
    public @Nullable Double peelNPerCm() {
        return peel == null ? null : peel.strengthNPerCm();
    }

    /** Cleavage strength in N/cm; null where it is not stated. */
    public @Nullable Double cleavageNPerCm() {
        return cleavage == null ? null : cleavage.strengthNPerCm();
    }

    /** Shear strength in kPa; null where it is not stated. */
    public @Nullable Double shearKPa() {
        return shear == null ? null : shear.strengthKPa();
    }

    /** Tensile strength in kPa; null where it is not stated. */
    public @Nullable Double tensileKPa() {
        return tensile == null ? null : tensile.strengthKPa();
    }
}
