package org.vanewright.printrun.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.printing.Softening;
import org.vanewright.engineering.printing.SunlitSkin;

/**
 * How hot a skin gets in the sun, and which materials stand it.
 *
 * @param skin of the surface asked about
 * @param inputs in words
 * @param rows a line for each surface compared
 * @param materials a line for each class of material on the surface asked about
 * @param verdict on the material asked about
 * @param warning whether that verdict warns
 */
public record HeatView(
        String skin, String inputs, List<Row> rows, List<MaterialRow> materials, String verdict, boolean warning) {
    public static final String METHOD = "Steady balance of the outer skin: what it absorbs of the sun, it gives off by "
            + "convection and radiation, αG = h(Ts − Ta) + εσ(Ts⁴ − Ta⁴). Nothing is lost to the inside, the sky counts as "
            + "warm as the air, and the wing stands still: a wing in flight or in wind stays cooler. After Incropera and "
            + "DeWitt, Fundamentals of Heat and Mass Transfer, chapter 1 (from memory). Softening ranges and standing in "
            + "sunlight are typical figures over grades, from memory; a margin of 15 K below softening is engineering "
            + "judgement, no source. The data sheet of the material at hand decides.";

    /** A surface: its colour and its temperature. */
    public record Row(String surface, String temperature, String verdict) {}

    /** A class of material on the surface asked about. */
    public record MaterialRow(String material, String softens, String uv, String verdict, boolean warning) {}

    static HeatView of(PrintMaterial material, SunlitSkin skin) {
        double hot = skin.temperatureC();
        Softening.Verdict verdict = material.softening().at(hot);
        return new HeatView(
                celsius(hot),
                inputs(skin),
                SunForm.SURFACES.stream()
                        .map(o -> row(material, Double.parseDouble(o.value()), o.label(), skin))
                        .toList(),
                Arrays.stream(PrintMaterial.values()).map(m -> row(m, hot)).toList(),
                material.label() + ": " + verdict.words() + ". In sunlight: "
                        + material.softening().uv().words() + ".",
                verdict != Softening.Verdict.CLEAR || material.softening().uv() == Softening.UvStanding.POOR);
    }

    private static Row row(PrintMaterial material, double absorptance, String label, SunlitSkin like) {
        double hot = new SunlitSkin(
                        absorptance, like.irradianceWM2(), like.airC(), like.convectionWM2K(), like.emittance())
                .temperatureC();
        return new Row(label, celsius(hot), material.softening().at(hot).words());
    }

    private static MaterialRow row(PrintMaterial material, double hot) {
        Softening softening = material.softening();
        Softening.Verdict verdict = softening.at(hot);
        return new MaterialRow(
                material.label(),
                String.format(Locale.ROOT, "%.0f to %.0f °C", softening.lowC(), softening.highC()),
                softening.uv().words(),
                verdict.words(),
                verdict != Softening.Verdict.CLEAR);
    }

    private static String inputs(SunlitSkin skin) {
        return String.format(
                Locale.ROOT,
                "absorptance %.2f, sun %.0f W/m², air %.0f °C, heat transfer %.0f W/m²K, emittance %.2f",
                skin.absorptance(),
                skin.irradianceWM2(),
                skin.airC(),
                skin.convectionWM2K(),
                skin.emittance());
    }

    private static String celsius(double temperature) {
        return String.format(Locale.ROOT, "%.0f °C", temperature);
    }
}
