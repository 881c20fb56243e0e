package org.vanewright.platform.editing;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.FormDifference;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftClosedException;
import org.vanewright.record.DraftConflictException;
import org.vanewright.record.Drafts;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/**
 * Writing drafts of one kind of record in a form. A feature extends it with its form and its drawings, and maps it to
 * its plural. Its pages are {@code <kind>/edit} and {@code <kind>/preview}.
 *
 * <p>A draft is saved as it stands, complete or not; only what cannot be read is refused. What the rules miss is shown
 * as standing in the way of submitting.
 */
public abstract class DraftEditor<T extends RecordContent> {
    private final RecordService<T> records;
    private final Drafts<T> drafts;
    private final UploadedPhotographs photographs;

    protected DraftEditor(RecordService<T> records, UploadedPhotographs photographs) {
        this.records = records;
        this.drafts = records.drafts();
        this.photographs = photographs;
    }

    /** A form to start from. */
    protected abstract Form blank(HttpServletRequest request, Units units);

    protected abstract Form form(T content, UnitSystem units);

    /** The form as sent, after what its button does to its lists. */
    protected abstract Form posted(HttpServletRequest request, String action);

    /**
     * What was typed, complete or not; what cannot be read is refused in the form.
     *
     * @param before what it was before; null for a new record
     */
    protected abstract T read(Form form, @Nullable T before);

    /** What the fields of the form offer. */
    protected abstract void offer(Form form, Model model);

    /** Draws what can be drawn of what was typed. */
    protected abstract void draw(Form form, T typed, Model model);

    @GetMapping("/new")
    public ModelAndView blank(HttpServletRequest request, @RequestAttribute("units") Units units, Model model) {
        drafts.requireAuthor();
        Optional<Form> kept = KeptForm.take(request, "/" + records.plural() + "/new");
        model.addAttribute("kept", kept.isPresent());
        Form form = kept.orElseGet(() -> blank(request, units));
        return page(form, read(form, null), null, HttpStatus.OK, model);
    }

    @PostMapping("/new")
    public ModelAndView create(
            @RequestParam(name = "action", defaultValue = "check") String action,
            HttpServletRequest request,
            Model model) {
        drafts.requireAuthor();
        Form form = posted(request, action);
        photographs.take(request, form);
        T typed = read(form, null);
        if (FormAction.saves(action) && !form.hasProblems()) {
            return saved(drafts.start(typed), action);
        }
        return again(form, typed, null, action, model);
    }

    /** Starts the next revision, or goes on with it. */
    @PostMapping("/" + RecordPaths.SLUG + "/edit")
    public ModelAndView edit(@PathVariable("slug") String slug) {
        return SeeOther.to(path(drafts.startNext(records.shown(slug).ref())));
    }

    /** Starts a new record from a revision. */
    @PostMapping("/" + RecordPaths.REVISION + "/start")
    public ModelAndView start(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        return SeeOther.to(path(drafts.startFrom(new RevisionRef(slug, number))));
    }

    @GetMapping("/" + RecordPaths.DRAFT)
    public ModelAndView show(
            @PathVariable("id") String id,
            @RequestParam(name = "saved", required = false) @Nullable String saved,
            HttpServletRequest request,
            @RequestAttribute("units") Units units,
            Model model) {
        Draft<T> draft = drafts.find(id);
        if (!draft.state().isOpen()) {
            describe(draft, model);
            model.addAttribute("plural", records.plural());
            return new ModelAndView("shared/draft-closed");
        }
        Optional<Form> kept = KeptForm.take(request, path(draft));
        if (kept.isPresent()) {
            return kept(kept.get(), draft, model);
        }
        model.addAttribute("saved", saved != null);
        Form form = form(draft.content(), units.system());
        form.want(records.check(draft.content()));
        return page(form, draft.content(), draft, HttpStatus.OK, model);
    }

    /** What was typed before signing in; it started from the version that it names, which need not be the last. */
    private ModelAndView kept(Form form, Draft<T> draft, Model model) {
        model.addAttribute("kept", true);
        T typed = read(form, draft.content());
        form.want(records.check(typed));
        ModelAndView page = page(form, typed, draft, HttpStatus.OK, model);
        String version = form.value("version");
        if (version.matches("[1-9][0-9]{0,8}")) {
            model.addAttribute("version", Integer.valueOf(version));
        }
        return page;
    }

    /**
     * Saves a draft.
     *
     * @param version that the form started from
     * @param base number of the published revision that the form has taken in
     */
    @PostMapping("/" + RecordPaths.DRAFT)
    public ModelAndView save(
            @PathVariable("id") String id,
            @RequestParam("version") int version,
            @RequestParam(name = "base", required = false) @Nullable Integer base,
            @RequestParam(name = "action", defaultValue = "check") String action,
            HttpServletRequest request,
            Model model) {
        Draft<T> draft = drafts.find(id);
        Form form = posted(request, action);
        photographs.take(request, form);
        T typed = read(form, draft.content());
        if (FormAction.saves(action) && !form.hasProblems()) {
            try {
                return saved(drafts.save(id, version, typed, base), action);
            } catch (DraftConflictException e) {
                return conflict(form, typed, drafts.find(id), version, model);
            } catch (DraftClosedException e) {
                model.addAttribute("closed", e.getMessage());
                return page(form, typed, draft, HttpStatus.CONFLICT, model);
            }
        }
        ModelAndView page = again(form, typed, draft, action, model);
        model.addAttribute("version", version);
        return page;
    }

    /** What the form's drawings and problems would be, for the page to show beside it. */
    @PostMapping("/preview")
    public String preview(HttpServletRequest request, Model model) {
        drafts.requireAuthor();
        Form form = posted(request, "check");
        T typed = read(form, null);
        form.want(records.check(typed));
        model.addAttribute("form", form);
        draw(form, typed, model);
        return records.kind() + "/preview :: preview";
    }

    private ModelAndView saved(Draft<T> draft, String action) {
        return SeeOther.to(FormAction.submits(action) ? "/drafts/" + draft.id() + "/submit" : path(draft) + "?saved");
    }

    private ModelAndView again(Form form, T typed, @Nullable Draft<T> draft, String action, Model model) {
        HttpStatus status = FormAction.saves(action) ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.OK;
        if (!FormAction.changesList(action)) {
            form.want(records.check(typed));
        }
        return page(form, typed, draft, status, model);
    }

    private ModelAndView conflict(Form form, T typed, Draft<T> current, int startedFrom, Model model) {
        boolean known = startedFrom >= 1 && startedFrom <= current.version();
        T before = known ? drafts.version(current, startedFrom) : current.content();
        model.addAttribute(
                "savedMeanwhile", new Merge(null, null, differences(form, before, current.content(), typed)));
        form.want(records.check(typed));
        return page(form, typed, current, HttpStatus.CONFLICT, model);
    }

    private ModelAndView page(Form form, T typed, @Nullable Draft<T> draft, HttpStatus status, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("plural", records.plural());
        model.addAttribute("invented", typed.invented());
        model.addAttribute("address", draft == null ? "/" + records.plural() + "/new" : path(draft));
        if (draft != null) {
            describe(draft, model);
            describeBase(form, typed, draft, model);
        }
        offer(form, model);
        draw(form, typed, model);
        return new ModelAndView(records.kind() + "/edit", status);
    }

    private void describe(Draft<T> draft, Model model) {
        model.addAttribute("draft", draft);
        model.addAttribute("version", draft.version());
        Optional.ofNullable(draft.submitted())
                .flatMap(records::find)
                .ifPresent(r -> model.addAttribute("submitted", r));
    }

    /** Another revision may have been published since; then its changes are to be taken in. */
    private void describeBase(Form form, T typed, Draft<T> draft, Model model) {
        RevisionRef base = draft.base();
        if (base == null) {
            return;
        }
        model.addAttribute("takenIn", base.revision());
        Optional<Revision<T>> published =
                records.latest(base.slug()).filter(r -> !r.ref().equals(base));
        if (published.isPresent()) {
            Revision<T> theirs = published.get();
            T before = records.exactly(base).content();
            model.addAttribute("takenIn", theirs.number());
            model.addAttribute(
                    "publishedMeanwhile",
                    new Merge(
                            theirs.number(), theirs.contributor(), differences(form, before, theirs.content(), typed)));
        }
    }

    private List<FormDifference> differences(Form form, T before, T theirs, T yours) {
        UnitSystem units = form.units();
        return FormDifference.between(form(before, units), form(theirs, units), form(yours, units));
    }

    private String path(Draft<T> draft) {
        return "/" + records.plural() + "/drafts/" + draft.id();
    }
}
