package org.vanewright.printrun.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.device.DeviceService;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.layout.RowDocument;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunRules;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Recording and changing a print run. */
@Controller
@RequestMapping("/print-runs")
class PrintRunEditor extends DraftEditor<PrintRunDocument> {
    private static final Pattern REMOVE = Pattern.compile("remove (settings|sample)\\[(\\d{1,2})]");
    private static final int OFFERED = 200;

    private final PrintRunService runs;
    private final DeviceService devices;
    private final LayoutService layouts;

    PrintRunEditor(
            PrintRunService runs, DeviceService devices, LayoutService layouts, UploadedPhotographs photographs) {
        super(runs, photographs);
        this.runs = runs;
        this.devices = devices;
        this.layouts = layouts;
    }

    /** For the layout or the device asked for. */
    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        Optional<Revision<LayoutDocument>> layout =
                Optional.ofNullable(request.getParameter("layout")).flatMap(layouts::latest);
        Optional<RevisionRef> device = Optional.ofNullable(request.getParameter("device"))
                .flatMap(devices::latest)
                .map(Revision::ref)
                .or(() -> layout.flatMap(l -> l.content().rows().stream()
                        .map(RowDocument::device)
                        .flatMap(Stream::ofNullable)
                        .findFirst()));
        return PrintRunForms.blank(
                device.map(RevisionField::value).orElse(""),
                layout.map(l -> RevisionField.value(l.ref())).orElse(""));
    }

    /** A device is measured in millimetres, whatever the units of airframes. */
    @Override
    protected Form form(PrintRunDocument run, UnitSystem units) {
        return PrintRunForms.of(run);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        Matcher remove = REMOVE.matcher(action);
        if (remove.matches()) {
            form.remove(remove.group(1), Integer.parseInt(remove.group(2)));
        }
        switch (action) {
            case "add settings" -> PrintRunForms.addSetting(form);
            case "add sample" -> PrintRunForms.addSample(form);
            default -> {}
        }
        return form.limit(PrintRunForms.SETTINGS, PrintRunRules.MAX_SETTINGS)
                .limit(PrintRunForms.SAMPLE, PrintRunRules.MAX_SAMPLE);
    }

    @Override
    protected PrintRunDocument read(Form form, @Nullable PrintRunDocument before) {
        return PrintRunForms.read(form);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute(
                "choices",
                new PrintRunChoices(options(devices, form, "device"), options(layouts, form, "layout")));
    }

    private static List<Option> options(
            RecordService<?> records, Form form, String field) {
        return RevisionField.options(
                records.list(null, OFFERED).items(),
                Stream.ofNullable(RevisionField.quiet(form, field)).toList());
    }

    @Override
    protected void draw(Form form, PrintRunDocument typed, Model model) {
        model.addAttribute("result", RunView.of(typed, runs.device(typed).orElse(null)));
    }
}
