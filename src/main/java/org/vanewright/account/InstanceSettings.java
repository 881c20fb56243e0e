package org.vanewright.account;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;

/** What stewards choose for this instance. */
@Service
public class InstanceSettings {
    private static final String NAME = "name";
    private static final String CONTACT = "contact";
    private static final String REGISTERING = "registering";
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_CONTACT = 300;

    private final SettingRepository settings;
    private final Actors actors;
    private final AuditLog audit;

    InstanceSettings(SettingRepository settings, Actors actors, AuditLog audit) {
        this.settings = settings;
        this.actors = actors;
        this.audit = audit;
    }

    /** Name of the instance, such as the club's. */
    public String name() {
        return settings.find(NAME).orElse("Vanewright");
    }

    /** How people reach its keepers; may be empty. */
    public String contact() {
        return settings.find(CONTACT).orElse("");
    }

    /** Whether anybody may ask to be admitted. */
    public boolean registeringIsOpen() {
        return settings.find(REGISTERING).filter("open"::equals).isPresent();
    }

    /** All of them. */
    public record Chosen(String name, String contact, boolean registeringOpen) {}

    /** All of them, to be changed; stewards only. */
    public Chosen chosen() {
        actors.current().require(Power.RUN);
        return new Chosen(name(), contact(), registeringIsOpen());
    }

    /** Changes all of them; stewards only. */
    @Transactional
    public void change(@Nullable String name, @Nullable String contact, boolean registeringOpen) {
        Actor steward = actors.current();
        String id = steward.require(Power.RUN);
        Checks checks = new Checks();
        checks.text(NAME, name, LONGEST_NAME);
        checks.optionalText(CONTACT, contact, LONGEST_CONTACT);
        checks.throwIfAny();
        settings.put(NAME, String.valueOf(name));
        settings.put(CONTACT, contact == null ? "" : contact);
        settings.put(REGISTERING, registeringOpen ? "open" : "closed");
        String detail = "name: " + name + "; contact: " + (contact == null ? "none" : contact) + "; registering: "
                + (registeringOpen ? "open" : "closed");
        audit.add(id, steward.name(), "instance.changed", "settings", detail);
    }
}
