package org.vanewright.device;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.EditingPolicy;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Devices and their revisions. */
@Service
public class DeviceService {
    private static final String KIND = "device";

    private final DeviceRepository devices;
    private final EditingPolicy editing;

    DeviceService(DeviceRepository devices, EditingPolicy editing) {
        this.devices = devices;
        this.editing = editing;
    }

    public Optional<Revision<DeviceDocument>> latest(String slug) {
        return devices.latest(slug);
    }

    /** @throws RecordNotFoundException if nothing is published under that slug */
    public Revision<DeviceDocument> published(String slug) {
        return devices.latest(slug).orElseThrow(() -> new RecordNotFoundException(KIND, slug, null));
    }

    public Optional<Revision<DeviceDocument>> find(RevisionRef ref) {
        return devices.find(ref);
    }

    /** @throws RecordNotFoundException if there is no such revision */
    public Revision<DeviceDocument> exactly(RevisionRef ref) {
        return devices.find(ref).orElseThrow(() -> new RecordNotFoundException(KIND, ref.slug(), ref.revision()));
    }

    /** Every revision, newest first. */
    public List<Revision<DeviceDocument>> history(String slug) {
        return devices.history(slug);
    }

    /** Published devices, newest first. */
    public RecordPage<Revision<DeviceDocument>> list(@Nullable String cursor, int limit) {
        return devices.list(cursor, limit);
    }

    public boolean verify(Revision<DeviceDocument> revision) {
        return devices.verify(revision);
    }

    /**
     * Publishes a new device.
     *
     * @throws InvalidInputException with every problem the rules find
     */
    public Revision<DeviceDocument> create(
            DeviceDocument device, String contributor, @Nullable RevisionRef derivedFrom) {
        editing.requireOpen();
        return publish(device, contributor, derivedFrom);
    }

    /**
     * Publishes the next revision.
     *
     * @throws InvalidInputException with every problem the rules find
     * @throws org.vanewright.record.RevisionConflictException if {@code base} is no longer the published one
     */
    public Revision<DeviceDocument> revise(RevisionRef base, DeviceDocument device, String contributor) {
        editing.requireOpen();
        return publishNext(base, device, contributor);
    }

    /** As {@link #create} without asking who may edit: for data that comes with the service. */
    Revision<DeviceDocument> publish(DeviceDocument device, String contributor, @Nullable RevisionRef derivedFrom) {
        requireValid(device);
        return devices.publishNew(device, contributor, derivedFrom);
    }

    Revision<DeviceDocument> publishNext(RevisionRef base, DeviceDocument device, String contributor) {
        requireValid(device);
        return devices.publishNext(base, device, contributor);
    }

    private static void requireValid(DeviceDocument device) {
        List<FieldProblem> problems = DeviceRules.check(device);
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
    }
}
