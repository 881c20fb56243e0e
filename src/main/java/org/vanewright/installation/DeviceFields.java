package org.vanewright.installation;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;

/** Fields that name one device of a layout, such as {@code LEFT 12 Wing}. */
public final class DeviceFields {
    private DeviceFields() {}

    /** The device it names; null, with a problem noted for anything but a blank, otherwise. */
    public static @Nullable DeviceAt read(Form form, String path) {
        String typed = form.text(path);
        if (typed == null) {
            return null;
        }
        Optional<DeviceAt> device = DeviceAt.ofKey(typed);
        if (device.isEmpty()) {
            form.refuse(new FieldProblem(
                    path, typed.length() > 80 ? typed.substring(0, 77) + "…" : typed, "one of the choices"));
        }
        return device.orElse(null);
    }

    /** Choices of devices. */
    public static List<Option> options(List<FittedDevice> devices) {
        return devices.stream().map(d -> new Option(d.at().key(), d.words())).toList();
    }
}
