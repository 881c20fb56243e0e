package org.vanewright.adhesive;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;

/** Adhesives in the export. */
@Component
class AdhesiveTables implements RecordTables<AdhesiveDocument> {
    /** A strength, for a width or for an area. */
    private record Strength(
            Property property,
            @Nullable Double nPerCm,
            @Nullable Double kPa,
            @Nullable TestMethod method) {}

    @Override
    public String kind() {
        return "adhesive";
    }

    @Override
    public List<RecordTable<AdhesiveDocument, ?>> tables() {
        return List.of(adhesives(), strengths());
    }

    private static RecordTable<AdhesiveDocument, AdhesiveDocument> adhesives() {
        return RecordTable.ofRecords(
                "adhesive",
                "adhesives",
                "Classes of tapes and glues",
                new Columns<AdhesiveDocument>()
                        .text("name", "A class", AdhesiveDocument::name)
                        .text("description", "How it was tried and on what", AdhesiveDocument::description)
                        .choice("carrier", "What carries the adhesive", AdhesiveDocument::carrier)
                        .number("thickness_mm", "mm", "Of the tape or bond line", AdhesiveDocument::thicknessMm)
                        .number(
                                "modulus_kpa",
                                "kPa",
                                "Tensile modulus through its thickness",
                                AdhesiveDocument::modulusKPa)
                        .number("service_lowest_c", "°C", "Coldest it is made for", service(Temperatures::lowestC))
                        .number("service_highest_c", "°C", "Hottest it is made for", service(Temperatures::highestC))
                        .number(
                                "application_lowest_c",
                                "°C",
                                "Coldest to apply it at",
                                a -> of(a.application(), Temperatures::lowestC))
                        .number(
                                "application_highest_c",
                                "°C",
                                "Hottest to apply it at",
                                a -> of(a.application(), Temperatures::highestC))
                        .number(
                                "dwell_h",
                                "h",
                                "Until it has its strength at room temperature",
                                AdhesiveDocument::dwellHours)
                        .number(
                                "holding_h",
                                "h",
                                "How long a hung mass stayed up",
                                a -> of(a.holding(), Holding::hours))
                        .number("holding_mass_g", "g", "That mass", a -> of(a.holding(), Holding::massG))
                        .number("holding_area_mm2", "mm2", "Area that held it", a -> of(a.holding(), Holding::areaMm2))
                        .choice(
                                "holding_method",
                                "How that was measured",
                                a -> a.holding() == null ? null : a.holding().method())
                        .number(
                                "pack_lb",
                                "lb",
                                "As on the pack, which is no strength",
                                a -> of(a.pack(), PackRating::pounds))
                        .text(
                                "pack_words",
                                "As on the pack",
                                a -> a.pack() == null ? null : a.pack().words())
                        .text(
                                "practice",
                                "What people say of it: common practice, no source",
                                AdhesiveDocument::practice)
                        .yesNo("invented", "Whether it is demonstration data", AdhesiveDocument::invented));
    }

    private static Function<AdhesiveDocument, @Nullable Double> service(
            Function<Temperatures, @Nullable Double> figure) {
        return a -> of(a.service(), figure);
    }

    private static <P> @Nullable Double of(@Nullable P part, Function<P, @Nullable Double> figure) {
        return part == null ? null : figure.apply(part);
    }

    private static RecordTable<AdhesiveDocument, Strength> strengths() {
        return RecordTable.ofParts(
                "adhesives",
                "adhesive_strengths",
                "Strengths with their test method; figure_origins says how each is known",
                "number",
                AdhesiveTables::strengthsOf,
                new Columns<Strength>()
                        .choice("property", "In which sense it is strong", Strength::property)
                        .number(
                                "strength_n_per_cm",
                                "N/cm",
                                "Of peel and cleavage: force for a width",
                                Strength::nPerCm)
                        .number("strength_kpa", "kPa", "Of shear and tension: force for an area", Strength::kPa)
                        .choice("method", "How it was measured", Strength::method));
    }

    private static List<Strength> strengthsOf(AdhesiveDocument a) {
        List<Strength> all = new ArrayList<>();
        add(all, Property.PEEL, a.peel());
        add(all, Property.CLEAVAGE, a.cleavage());
        add(all, Property.SHEAR, a.shear());
        add(all, Property.TENSILE, a.tensile());
        return all;
    }

    private static void add(List<Strength> all, Property property, @Nullable LineStrength strength) {
        if (strength != null) {
            all.add(new Strength(property, strength.strengthNPerCm(), null, strength.method()));
        }
    }

    private static void add(List<Strength> all, Property property, @Nullable AreaStrength strength) {
        if (strength != null) {
            all.add(new Strength(property, null, strength.strengthKPa(), strength.method()));
        }
    }
}
