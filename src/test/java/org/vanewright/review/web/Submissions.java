package org.vanewright.review.web;

import org.springframework.context.ApplicationContext;
import org.vanewright.account.AsPerson;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.record.Draft;
import org.vanewright.record.Licence;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Devices that people draft and submit, for tests of what comes after. */
final class Submissions {
    static final RevisionRef DEMO = new RevisionRef("rectangular-vane-8-by-20", 1);

    private final DeviceService devices;

    Submissions(ApplicationContext service) {
        this.devices = service.getBean(DeviceService.class);
    }

    DeviceService devices() {
        return devices;
    }

    /** A copy of a demonstration device under another name. */
    Draft<DeviceDocument> draft(String author, String name) {
        return AsPerson.as(author, () -> {
            Draft<DeviceDocument> draft = devices.drafts().startFrom(DEMO);
            return devices.drafts().save(draft.id(), 1, named(draft.content(), name), null);
        });
    }

    Draft<DeviceDocument> change(String author, RevisionRef base, double densityKgM3) {
        return AsPerson.as(author, () -> {
            Draft<DeviceDocument> draft = devices.drafts().startNext(base);
            return devices.drafts().save(draft.id(), draft.version(), dense(draft.content(), densityKgM3), null);
        });
    }

    Revision<DeviceDocument> submit(String author, Draft<DeviceDocument> draft) {
        return AsPerson.as(
                author,
                () -> devices.drafts()
                        .submit(draft.id(), draft.version(), Licence.CC_BY_4_0, "Lighter than before"));
    }

    void publish(String reviewer, RevisionRef ref) {
        AsPerson.as(reviewer, () -> devices.reviews().publish(ref));
    }

    private static DeviceDocument named(DeviceDocument d, String name) {
        return new DeviceDocument(
                name, d.description(), d.vane(), d.pair(), d.base(), d.indexMark(), d.chordToleranceMm(),
                d.densityKgM3(), true);
    }

    private static DeviceDocument dense(DeviceDocument d, double densityKgM3) {
        return new DeviceDocument(
                d.name(), d.description(), d.vane(), d.pair(), d.base(), d.indexMark(), d.chordToleranceMm(),
                densityKgM3, true);
    }
}
