package org.vanewright.installation;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.layout.StationRow;

/**
 * One device by its number in the station table of its layout.
 *
 * @param surface name of the surface
 * @param wing left or right
 * @param device number, from the root outward on that wing and surface
 */
public record DeviceAt(
        @Nullable String surface,
        @Nullable Wing wing,
        @Nullable Integer device) {
    /** By surface, wing and number. */
    public static final Comparator<DeviceAt> ORDER = Comparator.comparing((DeviceAt d) -> String.valueOf(d.surface()))
            .thenComparing(d -> String.valueOf(d.wing()))
            .thenComparing(d -> d.device() == null ? 0 : d.device());

    private static final Pattern KEY = Pattern.compile("(LEFT|RIGHT) ([1-9][0-9]{0,3}) (\\S.{0,119})");

    static DeviceAt of(StationRow station) {
        return new DeviceAt(station.surface(), station.wing(), station.device());
    }

    /** What a form's field holds for it; empty where it is not complete. */
    public String key() {
        return surface == null || wing == null || device == null ? "" : wing + " " + device + " " + surface;
    }

    /** From what a form's field holds. */
    public static Optional<DeviceAt> ofKey(String key) {
        Matcher matcher = KEY.matcher(key);
        return matcher.matches()
                ? Optional.of(new DeviceAt(
                        matcher.group(3), Wing.valueOf(matcher.group(1)), Integer.valueOf(matcher.group(2))))
                : Optional.empty();
    }

    /** Such as "Wing, left 12". */
    public String words() {
        return (surface == null ? "?" : surface) + ", "
                + (wing == null ? "?" : wing.name().toLowerCase(Locale.ROOT)) + " " + (device == null ? "?" : device);
    }
}
