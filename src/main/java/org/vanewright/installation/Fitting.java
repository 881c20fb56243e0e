package org.vanewright.installation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.StationRow;

/**
 * The devices of an installation: those of its layout's station table that were not left off.
 *
 * @param all of the layout, by surface, wing and number
 * @param devices those that were put on
 */
public record Fitting(List<FittedDevice> all, List<FittedDevice> devices) {
    static Fitting of(LayoutDocument layout, LayoutPlan plan, List<DeviceAt> leftOff) {
        List<FittedDevice> all = new ArrayList<>();
        for (StationRow station : StationRow.of(layout, plan)) {
            DeviceDesign.Vane vane =
                    plan.devices().get(station.row() - 1).content().vane();
            all.add(new FittedDevice(DeviceAt.of(station), station, vane == null ? null : vane.heightMm()));
        }
        Set<DeviceAt> off = new HashSet<>(leftOff);
        return new Fitting(
                List.copyOf(all),
                all.stream().filter(d -> !off.contains(d.at())).toList());
    }

    /** One of the layout's devices. */
    public Optional<FittedDevice> find(DeviceAt at) {
        return all.stream().filter(d -> d.at().equals(at)).findFirst();
    }

    /** Whether it was put on. */
    public boolean fitted(DeviceAt at) {
        return devices.stream().anyMatch(d -> d.at().equals(at));
    }

    /** How many were put on in each row, by the row's name. */
    public Map<String, Long> byRow() {
        return devices.stream()
                .map(d -> d.station().rowName())
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
    }
}
