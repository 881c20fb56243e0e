package org.vanewright.review;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import tools.jackson.databind.json.JsonMapper;

/** How each kind of record looks; one without a view of its own is shown as its plain fields. */
@Component
public class Views {
    private static final Logger LOG = LoggerFactory.getLogger(Views.class);

    private final List<RecordView<?>> views;
    private final CanonicalJson json;
    private final JsonMapper mapper;

    Views(List<RecordView<?>> views, CanonicalJson json, JsonMapper mapper) {
        this.views = views;
        this.json = json;
        this.mapper = mapper;
    }

    /** What people call that kind of record, such as "Airframe". */
    public String label(String kind) {
        return views.stream()
                .filter(v -> v.kind().equals(kind))
                .map(RecordView::label)
                .findFirst()
                .orElseGet(() -> Character.toUpperCase(kind.charAt(0)) + kind.substring(1));
    }

    /** A revision beside another of its kind. */
    public <T extends RecordContent> Comparison compare(
            RecordService<T> service, @Nullable Revision<T> before, Revision<T> after, Units units) {
        Form then = before == null ? new Form(UnitSystem.METRIC) : fields(service.kind(), before.content(), units);
        Form now = fields(service.kind(), after.content(), units);
        return new Comparison(
                before,
                after,
                FieldChange.between(then, now),
                before == null ? List.of() : pictures(service.kind(), before.content(), units, "before"),
                pictures(service.kind(), after.content(), units, "after"));
    }

    private <T extends RecordContent> Form fields(String kind, T content, Units units) {
        RecordView<T> view = view(kind);
        return view == null
                ? PlainFields.of(mapper.readTree(json.write(content)))
                : view.fields(content, units.system());
    }

    private <T extends RecordContent> List<Picture> pictures(String kind, T content, Units units, String idPrefix) {
        RecordView<T> view = view(kind);
        try {
            return view == null ? List.of() : view.pictures(content, units, idPrefix);
        } catch (RuntimeException e) {
            LOG.warn("a {} cannot be drawn", kind, e);
            return List.of();
        }
    }

    @SuppressWarnings("unchecked") // the kind names the type
    private <T extends RecordContent> @Nullable RecordView<T> view(String kind) {
        return (RecordView<T>)
                views.stream().filter(v -> v.kind().equals(kind)).findFirst().orElse(null);
    }
}
