package org.vanewright.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.campaign.Measure;

/**
 * What must be alike before comparisons are summed up. Settings are compared as their plans word them, whatever the case and
 * the blanks.
 *
 * @param quantity what was compared
 * @param flaps their setting
 * @param power its setting
 * @param calibrated whether airspeeds were calibrated
 * @param invented demonstration data, which never stand beside what was flown
 */
public record Alike(Measure quantity, String flaps, String power, boolean calibrated, boolean invented) {
    private static final String BETWEEN = "~";

    static Alike of(Finding finding) {
        return new Alike(
                finding.quantity(),
                plain(finding.setting().flaps()),
                plain(finding.setting().power()),
                finding.calibrated(),
                finding.invented());
    }

    private static String plain(String setting) {
        return setting.replace(BETWEEN, " ").strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** For addresses, within one quantity. */
    public String key() {
        return String.join(
                BETWEEN, flaps, power, calibrated ? "calibrated" : "indicated", invented ? "invented" : "flown");
    }

    /** Such as {@code flaps up, power idle, calibrated airspeeds}. */
    public String words() {
        return "flaps " + flaps + ", power " + power + ", " + (calibrated ? "calibrated" : "uncalibrated")
                + " airspeeds" + (invented ? ", invented" : "");
    }

    /** In what another differs, as reasons that follow "not counted:". */
    List<String> differencesOf(Alike other) {
        List<String> why = new ArrayList<>();
        if (other.invented != invented) {
            why.add(other.invented ? "invented demonstration data" : "flown, and not invented as these are");
        }
        if (other.quantity != quantity) {
            why.add("another quantity");
        }
        if (!other.flaps.equals(flaps)) {
            why.add("flaps “" + other.flaps + "” instead of “" + flaps + "”");
        }
        if (!other.power.equals(power)) {
            why.add("power “" + other.power + "” instead of “" + power + "”");
        }
        if (other.calibrated != calibrated) {
            why.add(other.calibrated ? "airspeeds calibrated" : "airspeeds not calibrated");
        }
        return List.copyOf(why);
    }
}
