package org.vanewright.printrun;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceFacets;
import org.vanewright.device.DeviceService;
import org.vanewright.device.PrintMaterial;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.record.Revision;

@Component
class PrintRunSearch implements SearchSource<PrintRunDocument> {
    private final DeviceService devices;

    PrintRunSearch(DeviceService devices) {
        this.devices = devices;
    }

    @Override
    public String kind() {
        return "print-run";
    }

    @Override
    public String label() {
        return "Print run";
    }

    @Override
    public List<String> otherWords() {
        return List.of("printing", "printed");
    }

    @Override
    public int prominence() {
        return 80;
    }

    @Override
    public SearchDescription describe(Revision<PrintRunDocument> revision) {
        PrintRunDocument run = revision.content();
        Optional<Revision<DeviceDocument>> device =
                Optional.ofNullable(run.device()).flatMap(devices::find);
        List<String> subjects = new ArrayList<>();
        device.ifPresent(d -> subjects.add(d.content().name()));
        PrintMaterial material = run.printing().material();
        Stream.ofNullable(material).forEach(m -> subjects.add(m.label()));
        Stream.ofNullable(run.printing().machineClass()).forEach(subjects::add);
        Integer pieces = run.outcome().pieces();
        return new SearchDescription(
                (pieces == null ? "Pieces" : pieces == 1 ? "One piece" : pieces + " pieces")
                        + device.map(d -> " of " + d.content().name()).orElse("")
                        + (material == null ? "" : " in " + material.label()),
                device.map(d -> RevisionDrawings.thumbnail("devices", d)).orElse(null),
                subjects,
                Stream.ofNullable(run.description()).toList(),
                device.map(d -> DeviceFacets.of(d.content())).orElse(List.of()));
    }
}
